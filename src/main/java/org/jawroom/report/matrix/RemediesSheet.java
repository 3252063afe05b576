package org.jawroom.report.matrix;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.csv.RemediesCsv;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.wording.remedy.Elsewhere;
import org.jawroom.report.wording.remedy.RemedyLine;
import org.jawroom.report.wording.remedy.RemedyWords;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Shop;

/**
 * The sheet <i>Remedies</i>: single changes that would make a pairing fit, and what the shop has
 * that fits already. One row per remedy; the remedy of less clearance is set apart.
 */
final class RemediesSheet {
  static final String NAME = "Remedies";

  /** A row: the pairing's index, whether it is the pairing's first row, and its content. */
  private record Entry(int pairing, boolean first, RemedyLine line) {}

  private final ListSheet list;
  private final Styles styles;
  private final PairingLinks links;
  private final Elsewhere elsewhere;
  private final int across;

  private RemediesSheet(
      SXSSFWorkbook book, Styles styles, Elsewhere elsewhere, int across, SheetLimits limits) {
    this.styles = styles;
    this.elsewhere = elsewhere;
    this.across = across;
    this.links = new PairingLinks(book, limits, DrawnPairings.NONE);
    this.list =
        new ListSheet(
            book,
            styles,
            NAME,
            List.of(
                new Heading("Machine", 16),
                new Heading("Vise", 16),
                new Heading("As it is", 16),
                new Heading("What alone would make it fit", 38),
                new Heading("It is then", 8),
                new Heading("Margin then", 8),
                new Heading("Limited by then", 24),
                new Heading("Mind", 25),
                new Heading("Another vise of ours that fits here", 32),
                new Heading("A machine of ours where this vise fits", 32)),
            2);
  }

  static void add(
      SXSSFWorkbook book, Styles styles, Shop shop, List<Advice> advice, SheetLimits limits) {
    List<Outcome> outcomes = advice.stream().map(Advice::outcome).toList();
    Elsewhere elsewhere = Elsewhere.of(shop, outcomes, styles.unit());
    RemediesSheet sheet = new RemediesSheet(book, styles, elsewhere, shop.vises().size(), limits);
    List<Entry> entries = entries(advice, new RemedyWords(styles.unit()));
    String remark =
        entries.isEmpty()
            ? "Every pairing fits as it is, or too little of it was measured."
            : "Each row is one change that alone would do, the least effort first, then the least"
                + " amount. Margins in "
                + styles.unit().plural()
                + ", rounded toward less, of the roomiest place.";
    sheet
        .list
        .head("Remedies", entries, limits, RemediesCsv.FILE, remark)
        .forEach(entry -> sheet.entry(entry, advice.get(entry.pairing()).outcome()));
    sheet.list.finish();
  }

  private static List<Entry> entries(List<Advice> advice, RemedyWords words) {
    List<Entry> entries = new ArrayList<>();
    for (int pairing = 0; pairing < advice.size(); pairing++) {
      if (RemedyLine.isAbout(advice.get(pairing).outcome())) {
        boolean first = true;
        for (RemedyLine line : RemedyLine.of(advice.get(pairing), words)) {
          entries.add(new Entry(pairing, first, line));
          first = false;
        }
      }
    }
    return entries;
  }

  private void entry(Entry entry, Outcome outcome) {
    RemedyLine line = entry.line();
    Finding finding = Finding.of(outcome);
    CellStyle style = entry.first() ? styles.entry() : styles.repeated();
    CellStyle text = line.apart() ? styles.apart() : styles.entry();
    list.entry();
    list.text(outcome.machine().name(), style);
    list.text(outcome.vise().name(), style);
    // Short, because some spreadsheets do not wrap a link.
    links.add(list.text(Words.signed(finding), styles.entry(finding)), entry.pairing());
    list.text(line.words(), text);
    list.text(line.verdict().map(Verdict::code).orElse(""), text);
    list.length(
        line.then().map(limit -> OptionalLong.of(limit.margin())).orElse(OptionalLong.empty()),
        Rounding.DOWN,
        line.apart() ? styles.apartLength() : styles.length());
    list.text(line.then().map(Words::limit).orElse(""), text);
    list.text(line.mind(), text);
    list.text(entry.first() ? elsewhere.vises().get(entry.pairing() / across) : "");
    list.text(entry.first() ? elsewhere.machines().get(entry.pairing() % across) : "");
  }
}
