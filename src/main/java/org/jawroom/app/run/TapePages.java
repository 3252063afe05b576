package org.jawroom.app.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.advice.ToTape;
import org.jawroom.report.form.FormPage;
import org.jawroom.report.form.FormReading;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.tape.ToTapeWords;
import org.jawroom.shop.value.Measurand;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.template.FormContents;

/** The pages of readings to tape: for each machine and vise, a page for each of its sketches. */
public final class TapePages {

  /** How many readings a page holds under its sketch, long names included. */
  private static final int ON_A_PAGE = 4;

  /** The letters of a name that fit in a title and in a line. */
  private static final int LONGEST_TITLE = 36;

  private static final int LONGEST_READING = 22;
  private static final int LONGEST_PARTNERS = 160;

  private record Place(boolean ofMachine, String name) {}

  private final ToTapeWords words;

  private TapePages(ToTapeWords words) {
    this.words = words;
  }

  /**
   * The one whose reading settles most first.
   *
   * @param readings in the order in which they are taped
   */
  public static List<FormPage> of(List<ToTape> readings, ToTapeWords words) {
    Map<Place, Map<FormContents, List<ToTape>>> places = new LinkedHashMap<>();
    for (ToTape one : readings) {
      places
          .computeIfAbsent(
              new Place(one.ofMachine(), one.reading().name()), none -> new LinkedHashMap<>())
          .computeIfAbsent(sketch(one.reading()), none -> new ArrayList<>())
          .add(one);
    }
    List<FormPage> pages = new ArrayList<>();
    places.forEach(
        (place, sketches) ->
            sketches.forEach(
                (sketch, some) -> new TapePages(words).add(pages, place, sketch, some)));
    return pages;
  }

  private static FormContents sketch(Measurand reading) {
    return FormContents.of(reading.table(), reading.column())
        .orElseThrow(() -> new IllegalStateException(reading + " is on no sketch"));
  }

  private void add(List<FormPage> pages, Place place, FormContents sketch, List<ToTape> readings) {
    for (int from = 0; from < readings.size(); from += ON_A_PAGE) {
      List<ToTape> some = readings.subList(from, Math.min(readings.size(), from + ON_A_PAGE));
      Set<String> marked =
          some.stream().flatMap(one -> labels(one.reading())).collect(Collectors.toSet());
      pages.add(
          new FormPage(
              place.ofMachine ? "locked out by" : "vise no.",
              "Tape first: " + shortened(place.name, LONGEST_TITLE),
              sketch.sketch(marked),
              some.stream().map(this::reading).toList(),
              sketch.traps()));
    }
  }

  /** The labels on the sketch: a bolt of a mount is measured as the vise's own. */
  private static Stream<String> labels(Measurand reading) {
    return reading.table().equals(TableSpec.MOUNTS.tableName())
        ? switch (reading.column()) {
          case "u" -> Stream.of("bolt_u");
          case "v" -> Stream.of("bolt_spacing");
          default -> Stream.of("bolt_" + reading.column());
        }
        : Stream.of(reading.column());
  }

  private FormReading reading(ToTape one) {
    ColumnSpec column = column(one.reading());
    String within = words.within(one);
    String decides =
        "Now "
            + words.bounds(one.bounds())
            + ". "
            + sentence(words.decides(one))
            + " ("
            + words.unit().word()
            + "). "
            + (one.ofMachine() ? "Vises: " : "Machines: ")
            + shortened(ToTapeWords.which(one), LONGEST_PARTNERS)
            + ". "
            + (within.isEmpty() ? "" : "Read it " + within + ". ");
    return new FormReading(
        shortened(one.reading().reading(), LONGEST_READING),
        decides + column.help(),
        column.noneAllowed(),
        false);
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  private static ColumnSpec column(Measurand reading) {
    return Stream.of(TableSpec.values())
        .filter(table -> table.tableName().equals(reading.table()))
        .flatMap(table -> table.column(reading.column()).stream())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(reading + " is no column"));
  }

  private static String shortened(String text, int most) {
    String shown = PlainText.forCell(text);
    return shown.codePointCount(0, shown.length()) <= most
        ? shown
        : shown.substring(0, shown.offsetByCodePoints(0, most - 1)) + "…";
  }
}
