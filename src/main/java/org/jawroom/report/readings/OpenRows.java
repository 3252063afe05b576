package org.jawroom.report.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.shop.OpenReading;

/** The open readings of a shop by the machine or vise they belong to, and what they leave open. */
public final class OpenRows {
  private static final int NAMED = 3;

  private static final Comparator<OpenReading> IN_ORDER = Comparator.comparing(OpenReading::column);

  private record Owner(boolean machine, String name) {}

  private static final class Row {
    private final Set<OpenReading> readings = new LinkedHashSet<>();

    /** The partners in the pairings that stay unknown. */
    private final List<String> unknown = new ArrayList<>();

    /** How many pairings need one of the readings. */
    private int pairings;
  }

  private final PeopleUnit unit;
  private final Map<Owner, Row> rows = new LinkedHashMap<>();

  private OpenRows(PeopleUnit unit) {
    this.unit = unit;
  }

  /**
   * One line for each machine, then for each vise with an open reading that a pairing needs: {@code
   * machine mill: rear_gap from 10 to 40 mm; 2 of 3 pairings unknown: six inch, plain}.
   *
   * @param outcomes of every pairing, machines then vises in input order
   */
  public static List<String> lines(PeopleUnit unit, List<Outcome> outcomes) {
    OpenRows open = new OpenRows(unit);
    outcomes.forEach(open::add);
    List<String> lines = new ArrayList<>();
    for (boolean machine : List.of(true, false)) {
      open.rows.forEach(
          (owner, row) -> {
            if (owner.machine == machine) {
              lines.add(open.line(owner, row));
            }
          });
    }
    return lines;
  }

  private void add(Outcome outcome) {
    List<OpenReading> readings = outcome.openReadings();
    add(outcome, new Owner(true, outcome.machine().name()), readings, outcome.vise().name());
    add(outcome, new Owner(false, outcome.vise().name()), readings, outcome.machine().name());
  }

  private void add(Outcome outcome, Owner owner, List<OpenReading> readings, String partner) {
    List<OpenReading> its =
        readings.stream().filter(one -> one.isOfMachine() == owner.machine).toList();
    if (its.isEmpty()) {
      return;
    }
    Row row = rows.computeIfAbsent(owner, first -> new Row());
    row.readings.addAll(its);
    row.pairings++;
    if (outcome.verdict() == Verdict.UNKNOWN) {
      row.unknown.add(partner);
    }
  }

  private String line(Owner owner, Row row) {
    OpenWords words = new OpenWords(unit);
    return (owner.machine ? "machine " : "vise ")
        + owner.name
        + ": "
        + row.readings.stream().sorted(IN_ORDER).map(words::named).collect(Collectors.joining(", "))
        + "; "
        + unknown(row);
  }

  private static String unknown(Row row) {
    int count = row.unknown.size();
    if (count == 0) {
      return "no pairing unknown";
    }
    int more = count - NAMED;
    return count
        + " of "
        + row.pairings
        + (row.pairings == 1 ? " pairing" : " pairings")
        + " unknown: "
        + row.unknown.stream().limit(NAMED).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
