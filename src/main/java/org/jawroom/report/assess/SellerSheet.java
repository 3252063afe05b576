package org.jawroom.report.assess;

import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.advice.assess.Question;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.machine.Machine;

/** The sheet <i>Ask the seller</i>: each blank, and which answers change which result. */
final class SellerSheet {
  static final String NAME = "Ask the seller";

  private static final List<ListSheet.Heading> HEADINGS =
      List.of(
          new ListSheet.Heading("Machine", 24),
          new ListSheet.Heading("Ask for", 22),
          new ListSheet.Heading("Which is", 52),
          new ListSheet.Heading("Vise or job", 26),
          new ListSheet.Heading("What the answer decides", 52));

  private final ListSheet sheet;
  private final SellerWords words;

  private SellerSheet(ListSheet sheet, SellerWords words) {
    this.sheet = sheet;
    this.words = words;
  }

  static void add(SXSSFWorkbook book, Styles styles, Assessment assessment) {
    ListSheet sheet = new ListSheet(book, styles, NAME, HEADINGS, 1);
    sheet.head(
        "What to ask the seller",
        "Limits with every other blank at its best, rounded toward less clearance. A limit is met only if the"
            + " answer is as well known as the machine's other figures.");
    SellerSheet seller = new SellerSheet(sheet, new SellerWords(styles.unit()));
    assessment.candidates().forEach(seller::machine);
    sheet.finish();
  }

  private void machine(Assessed assessed) {
    Machine machine = assessed.machine();
    for (Question question : assessed.questions()) {
      question
          .changes()
          .forEach(change -> entry(machine, question, change.subject(), words.change(change)));
      question
          .open()
          .forEach(
              name -> entry(machine, question, name, "depends on it; no limit can be computed"));
      if (question.isIdle()) {
        entry(machine, question, "", "nothing of yours depends on it");
      }
    }
    for (String kind : LookedFor.not(machine)) {
      sheet.entry();
      sheet.text(machine.name());
      sheet.text(kind);
      sheet.text("whether there is one, and where");
      sheet.text("all");
      sheet.text("nobody looked for it: it is not counted");
    }
  }

  private void entry(Machine machine, Question question, String subject, String decides) {
    sheet.entry();
    sheet.text(machine.name());
    sheet.text(words.open().named(question.reading()));
    sheet.text(SellerWords.means(question.column()));
    sheet.text(subject);
    sheet.text(decides);
  }
}
