package org.jawroom.report.wording;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.MarginBounds;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.value.Column;

/** Open readings, and what follows from them, in words. */
public record OpenWords(PeopleUnit unit) {

  /** How many readings a sentence lists. */
  private static final int NAMED = 3;

  /** {@code rear_gap}, {@code gap of the hose arm}, {@code hole_u of ends}. */
  public static String column(OpenReading reading) {
    String item = reading.measurand().item();
    return reading.column().column() + (item.isEmpty() ? "" : " of " + item);
  }

  /** The same as files print it: {@code guards.gap (the hose arm)}. */
  public static String path(OpenReading reading) {
    String item = reading.measurand().item();
    return reading.column().path() + (item.isEmpty() ? "" : " (" + item + ")");
  }

  /** {@code rear_gap from 10 to 40 mm}; of a blank the name alone. */
  public String named(OpenReading reading) {
    String bounds = bounds(reading);
    return column(reading) + (bounds.isEmpty() ? "" : " " + bounds);
  }

  /**
   * {@code from 10 to 40 mm}, {@code up to 40 mm}, {@code from 10 mm on}; empty for a blank. Both
   * ends are rounded inward, unless that leaves nothing between them.
   */
  public String bounds(OpenReading reading) {
    if (reading.value().isBlank()) {
      return "";
    }
    Interval values = reading.value().values(0);
    boolean starts =
        Length.isBounded(values.lo()) && (values.lo() != 0 || BlankGaps.isGap(reading.column()));
    boolean ends = Length.isBounded(values.hi());
    if (starts && ends) {
      return between(values) + " " + unit.word();
    }
    return ends
        ? "up to " + unit.fine(values.hi(), Rounding.DOWN) + " " + unit.word()
        : "from " + unit.fine(values.lo(), Rounding.UP) + " " + unit.word() + " on";
  }

  private String between(Interval values) {
    String from = unit.fine(values.lo(), Rounding.UP);
    String to = unit.fine(values.hi(), Rounding.DOWN);
    boolean narrow =
        unit.fineNumber(values.lo(), Rounding.UP) > unit.fineNumber(values.hi(), Rounding.DOWN);
    return narrow ? "from " + to + " to " + from : "from " + from + " to " + to;
  }

  /**
   * {@code whatever the rear_gap is from 10 to 40 mm}; of several readings {@code whatever these
   * are: …}, at most three of them by name.
   *
   * @param readings at least one
   */
  public String whatever(List<OpenReading> readings) {
    if (readings.size() == 1) {
      OpenReading only = readings.get(0);
      String bounds = bounds(only);
      return "whatever " + column(only) + " is" + (bounds.isEmpty() ? "" : ", " + bounds);
    }
    return "whatever these are: " + list(readings);
  }

  /** {@code rear_gap, base_width from 180 to 200 mm and 2 more}. */
  public String list(List<OpenReading> readings) {
    int more = readings.size() - NAMED;
    return readings.stream().limit(NAMED).map(this::named).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  /**
   * What keeps something unknown: {@code not measured: front_gap; known only as rear_gap from 10 to
   * 40 mm}.
   *
   * @param columns of open readings; those of {@code readings} and others, which are blank
   */
  public String undecided(List<Column> columns, List<OpenReading> readings) {
    Set<Column> blank = new LinkedHashSet<>(columns);
    List<OpenReading> ranges = readings.stream().filter(one -> !one.value().isBlank()).toList();
    ranges.forEach(one -> blank.remove(one.column()));
    readings.stream().filter(one -> one.value().isBlank()).forEach(one -> blank.add(one.column()));
    List<String> words = new ArrayList<>();
    if (!blank.isEmpty()) {
      words.add(
          "not measured: " + Words.columns(columns.stream().filter(blank::contains).toList()));
    }
    if (!ranges.isEmpty()) {
      words.add(
          "known only as " + ranges.stream().map(this::named).collect(Collectors.joining(", ")));
    }
    return String.join("; ", words);
  }

  /**
   * {@code from -6 to 9}: the margins at worst and at best, both rounded down; empty if one of them
   * has no end.
   */
  public Optional<String> margins(MarginBounds bounds) {
    return bounds.atWorst().isPresent() && bounds.atBest().isPresent()
        ? Optional.of("from " + margin(bounds.atWorst()) + " to " + margin(bounds.atBest()))
        : Optional.empty();
  }

  /**
   * {@code −6 to 9}: the same for a cell of a matrix, to the step of its other margins, with a real
   * minus sign.
   */
  public Optional<String> cell(MarginBounds bounds) {
    return bounds.atWorst().isPresent() && bounds.atBest().isPresent()
        ? Optional.of(brief(bounds.atWorst()) + " to " + brief(bounds.atBest()))
        : Optional.empty();
  }

  private String brief(OptionalLong margin) {
    return unit.brief(margin.getAsLong(), Rounding.DOWN).replace('-', '−');
  }

  /** {@code -6}. */
  public String margin(OptionalLong margin) {
    return unit.fine(margin.getAsLong(), Rounding.DOWN);
  }
}
