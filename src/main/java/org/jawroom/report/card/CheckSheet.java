package org.jawroom.report.card;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.card.measure.Checkpoints;
import org.jawroom.report.card.statement.CardRow;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.place.TapeMeasure;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.shop.vise.Vise;

/**
 * The gaps of setup cards as rows of the table {@code checks}, the gap found left blank. The rows
 * stand in the order of the cards and of the numbers on each.
 *
 * @param rows the cells in the order of {@link #HEADER}
 */
public record CheckSheet(List<List<String>> rows) {

  /** The columns of the table {@code checks}. */
  public static final List<String> HEADER =
      List.of(
          "machine",
          "vise",
          "handle_to",
          "from_left",
          "from_front",
          "part",
          "guard",
          "opening",
          "situation",
          "axis",
          "found",
          "tolerance",
          "source",
          "measured",
          "unit");

  /** Only a sheet into which nothing was typed may be replaced. */
  private static final ReportKind KIND = ReportMarks.shortCsv(CheckSheet::isBlank);

  /** Enough for 1/10 of a thousandth of an inch. */
  private static final int INCH_DECIMALS = 4;

  public CheckSheet {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * The sheet of some cards, of several vises on a card one after the other. A gap of a part that
   * is being worked on has no row: the part is no part of the vise. Nor has any of a vise that
   * stands turned on its swivel base: checks are made with the jaws square.
   *
   * @param unit of the places, and of what is to be filled in
   */
  public static CheckSheet of(PeopleUnit unit, List<CardSubject> cards) {
    List<List<String>> rows = new ArrayList<>();
    for (CardSubject card : cards) {
      for (CardRow.Stand standing : card.checked()) {
        for (Limit limit : Checkpoints.limits(standing.pairs())) {
          if (limit.part().role() != PartRole.WORK && !standing.vise().isTurned()) {
            rows.add(row(unit, card, standing.place(), limit));
          }
        }
      }
    }
    return new CheckSheet(rows);
  }

  private static List<String> row(
      PeopleUnit unit, CardSubject card, Recommendation place, Limit limit) {
    Vise vise = card.outcome().vise();
    List<TapeMeasure> measures =
        new TapeWords(unit, card.machine(), vise).measures(place.handleTo(), place.x(), place.y());
    return List.of(
        PlainText.harmless(card.machine().name()),
        PlainText.harmless(vise.name()),
        place.handleTo().word(),
        figure(unit, measures.get(0).distance()),
        figure(unit, measures.get(1).distance()),
        PlainText.harmless(limit.part().name()),
        PlainText.harmless(limit.guard().name()),
        opening(vise, place.openings(), limit.opening()),
        lower(limit.situation()),
        lower(limit.axis()),
        "",
        "",
        "",
        "",
        unit.word());
  }

  /** An end of the opening range in use: closed or open if the vise opens no further that way. */
  private static String opening(Vise vise, Interval openings, JawEnd end) {
    boolean open = end == JawEnd.OPEN;
    long length = open ? openings.hi() : openings.lo();
    if (length == (open ? vise.opening().hi() : vise.opening().lo())) {
      return open ? "open" : "closed";
    }
    return Figures.millimetres(length, Rounding.NEAREST) + " mm";
  }

  private static String figure(PeopleUnit unit, long length) {
    return unit == PeopleUnit.MM
        ? Figures.millimetres(length, Rounding.NEAREST)
        : BigDecimal.valueOf(length)
            .divide(BigDecimal.valueOf(unit.length()), INCH_DECIMALS, RoundingMode.HALF_UP)
            .toPlainString();
  }

  private static String lower(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** Returns the file that {@link #write} writes. */
  public static Destination destination(Path file) {
    return Destination.file(file, KIND);
  }

  /** The line for the terminal once it is written. */
  public String written(Path file) {
    return "Written: "
        + file
        + " ("
        + rows.size()
        + " gaps in the order of the cards; fill in found and source, delete what was not measured,"
        + " correct from_left and from_front if the vise stands elsewhere)";
  }

  /** Writes {@code file} completely or not at all. */
  public void write(Path file) throws IOException {
    AtomicFiles.publish(
        destination(file),
        out -> {
          CsvReport table = new CsvReport(out, HEADER);
          for (List<String> row : rows) {
            table.row(row);
          }
          table.finish();
        });
  }

  private static boolean isBlank(List<List<String>> rows) {
    int found = HEADER.indexOf("found");
    return !rows.isEmpty()
        && rows.get(0).equals(HEADER)
        && rows.stream()
            .skip(1)
            .allMatch(row -> row.size() == HEADER.size() && row.get(found).isBlank());
  }
}
