package org.jawroom.report.assess;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.advice.Advice;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.advice.assess.NutFit;
import org.jawroom.advice.assess.Question;
import org.jawroom.advice.assess.Room;
import org.jawroom.advice.assess.RoomLimit;
import org.jawroom.advice.blank.Relation;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Vise;
import org.jawroom.standards.ClearanceHole;

/**
 * {@code assess.csv}: one row for each fact about a candidate, in the columns {@code candidate,
 * subject, item, value, unit, note}.
 *
 * <p>Lengths are in mm to 0.001: available room is rounded down, required room up. Names are joined
 * by {@code ;}. Subjects:
 *
 * <ul>
 *   <li>{@code better}: whether it is the better buy, and what decides.
 *   <li>{@code vises}: how many kinds have each verdict, and which; {@code in doubt}: those that
 *       need a reading which checks say may be wrong; {@code best vise}: the usable opening and the
 *       jaw of the best of them; {@code homeless}: the number of vises that neither fit nor are
 *       awkward on an owned machine, and how many of those do here; {@code side by side}: how many
 *       of each kind.
 *   <li>{@code jobs}: {@code held}, {@code unchecked} (held, tool or load not checked), {@code in
 *       doubt} (held, but only so), {@code only here}, {@code unknown}, {@code perhaps only here},
 *       {@code barred}.
 *   <li>{@code nuts}: for each width of owned slots how its nut fits ({@link NutFit}), and which
 *       machines have it; {@code bolt}: thread and hole.
 *   <li>{@code room}: for each turn and given size of the other side the greatest size; no value if
 *       the note is {@code any} or {@code never}. With blanks left out {@code at best}, and a
 *       second time with every open gap at its least, a blank one as 0.
 *   <li>{@code under the spindle}: vise and part together.
 *   <li>{@code ask}: one row for each result that depends on a blank ({@link Question}); the value
 *       with the other blanks at best, as in {@code unknowns.csv}, and, where there is one, the
 *       value that is {@code sure} with them at worst.
 * </ul>
 */
final class AssessCsv {

  /** The name of the file. */
  static final String FILE = "assess.csv";

  private static final List<String> HEADER =
      List.of("candidate", "subject", "item", "value", "unit", "note");

  static final ReportKind KIND = ReportMarks.csv(HEADER);

  private final CsvReport table;
  private final Assessment assessment;
  private String candidate = "";

  private AssessCsv(CsvReport table, Assessment assessment) {
    this.table = table;
    this.assessment = assessment;
  }

  /** Writes all rows, candidates in the order given; does not close {@code out}. */
  static void write(Assessment assessment, OutputStream out) throws IOException {
    CsvReport table = new CsvReport(out, HEADER);
    AssessCsv csv = new AssessCsv(table, assessment);
    for (Assessed one : assessment.candidates()) {
      csv.rows(one);
    }
    table.finish();
  }

  private void rows(Assessed one) throws IOException {
    candidate = one.machine().name();
    better(one);
    for (Verdict verdict : Verdict.values()) {
      names("vises", verdict.code(), AssessWords.vises(one.vises(verdict)));
    }
    names(
        "vises",
        AssessWords.IN_DOUBT,
        one.vises().stream()
            .map(Advice::outcome)
            .filter(outcome -> !outcome.inDoubt().isEmpty())
            .map(outcome -> outcome.vise().name())
            .toList());
    best(one);
    List<Vise> homeless = assessment.homeless();
    names("homeless", "all", AssessWords.vises(homeless));
    names("homeless", "fits", AssessWords.vises(homeless.stream().filter(one::isClear).toList()));
    names("jobs", "held", AssessWords.jobs(one.held()));
    names("jobs", "unchecked", AssessWords.jobs(one.unchecked()));
    names("jobs", AssessWords.IN_DOUBT, AssessWords.jobs(one.inDoubt()));
    names("jobs", "only here", AssessWords.jobs(one.onlyHere()));
    names("jobs", "unknown", AssessWords.jobs(one.unknown()));
    names("jobs", "perhaps only here", AssessWords.jobs(one.perhapsOnlyHere()));
    names("jobs", "barred", AssessWords.jobs(one.barred()));
    for (Advice vise : one.vises()) {
      if (vise.sideBySide().map(SideBySide::count).orElse(0) > 0) {
        row("side by side", vise.outcome().vise().name(), "" + AssessWords.count(vise), "", "");
      }
    }
    nuts(one);
    rooms(one.room(), one.roomBlanks().isEmpty() ? "" : "at best without " + blanks(one));
    rooms(
        one.roomAtZero(),
        AssessWords.hasRange(one)
            ? "every open gap at its least, a blank one 0"
            : "every blank gap 0");
    if (one.stack().isPresent()) {
      row(
          "under the spindle",
          "highest",
          CsvReport.down(one.stack()),
          "mm",
          assessment.tool().isPresent()
              ? "tool " + CsvReport.up(assessment.tool())
              : "no tool length given");
    }
    for (Question question : one.questions()) {
      ask(question);
    }
  }

  private void better(Assessed one) throws IOException {
    boolean best = assessment.better().best().contains(one);
    String value = best ? (assessment.better().best().size() > 1 ? "tie" : "yes") : "no";
    row(
        "better",
        "buy",
        assessment.candidates().size() == 1 ? "alone" : value,
        "",
        assessment
            .better()
            .decidedBy()
            .map(by -> by.name().toLowerCase(java.util.Locale.ROOT))
            .orElse(""));
  }

  private void best(Assessed one) throws IOException {
    if (one.best().isPresent()) {
      String name = one.best().get().outcome().vise().name();
      row("best vise", "opening", CsvReport.down(OptionalLong.of(one.opening())), "mm", name);
      row("best vise", "jaw", CsvReport.down(OptionalLong.of(one.jaw())), "mm", name);
    }
  }

  private void nuts(Assessed one) throws IOException {
    for (NutFit nut : one.nuts()) {
      row(
          "nuts",
          CsvReport.down(nut.slot()),
          nut.fit().code(),
          "",
          String.join(";", nut.machines()));
    }
    OptionalLong thread = OfferWords.thread(one.machine());
    if (thread.isPresent()) {
      row("bolt", "thread", CsvReport.up(thread), "mm", "");
      OptionalLong hole = ClearanceHole.of(thread.getAsLong());
      row("bolt", "hole", CsvReport.up(hole), "mm", "ISO 273 medium");
    }
  }

  private void rooms(List<Room> rooms, String note) throws IOException {
    for (Room room : rooms) {
      String turns = room.turns().stream().map(Orientation::word).collect(Collectors.joining(" "));
      limits(turns, room.longest(), " wide, longest", note);
      limits(turns, room.widest(), " long, widest", note);
    }
  }

  private void limits(String turns, List<RoomLimit> limits, String side, String note)
      throws IOException {
    for (RoomLimit limit : limits) {
      String relation = limit.relation() == Relation.AT_MOST ? "" : limit.relation().code();
      row(
          "room",
          turns + "; " + CsvReport.up(limit.given()) + side,
          CsvReport.down(limit.most()),
          "mm",
          relation + (relation.isEmpty() || note.isEmpty() ? "" : "; ") + note);
    }
  }

  private static String blanks(Assessed one) {
    return one.roomBlanks().stream().map(Column::path).collect(Collectors.joining(" "));
  }

  private void ask(Question question) throws IOException {
    String item = OpenWords.path(question.reading());
    for (Question.Change change : question.changes()) {
      boolean load = change.kilograms().isPresent();
      String value =
          load
              ? Figures.kilogramsUp(change.kilograms().get())
              : change.relation() == Relation.AT_MOST
                  ? CsvReport.down(change.limit())
                  : CsvReport.up(change.limit());
      row(
          "ask",
          item,
          value,
          load ? "kg" : "mm",
          change.relation().code()
              + " for "
              + (change.job() ? "job " : "vise ")
              + change.subject()
              + (change.alone() ? "" : "; other blanks too"));
    }
    for (Question.Change change : question.changes()) {
      if (!change.alone() && change.sure().isPresent()) {
        boolean atMost = change.relation() == Relation.AT_MOST;
        row(
            "ask",
            item,
            atMost ? CsvReport.down(change.sure()) : CsvReport.up(change.sure()),
            "mm",
            "sure for vise " + change.subject());
      }
    }
    for (String name : question.open()) {
      row("ask", item, "", "", "no limit for " + name);
    }
    if (question.isIdle()) {
      row("ask", item, "", "", "nothing depends on it");
    }
  }

  private void names(String subject, String item, List<String> names) throws IOException {
    row(subject, item, "" + names.size(), "", String.join(";", names));
  }

  private void row(String subject, String item, String value, String unit, String note)
      throws IOException {
    table.row(
        Arrays.asList(
            PlainText.harmless(candidate),
            subject,
            PlainText.harmless(item),
            value,
            unit,
            PlainText.harmless(note)));
  }
}
