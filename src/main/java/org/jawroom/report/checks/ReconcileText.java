package org.jawroom.report.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jawroom.checks.Narrowed;
import org.jawroom.checks.Reconciliation;
import org.jawroom.checks.Suspect;
import org.jawroom.checks.Suspicion;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.ExpectedGap.Agreement;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.WrappedLines;
import org.jawroom.shop.Check;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.value.Measurand;

/**
 * What checks say, as a page of text: the dangerous first. Ranges are rounded outward, so that none
 * leaves out a true value.
 */
public final class ReconcileText {

  /** The first line of every such page. */
  static final String TITLE = "What the machine says";

  private final PeopleUnit unit;
  private final long clearance;
  private final Reconciliation reconciliation;
  private final Map<List<Suspect>, List<String>> changes;
  private final int columns;
  private final List<String> lines = new ArrayList<>();

  private ReconcileText(
      PeopleUnit unit,
      long clearance,
      Reconciliation reconciliation,
      Map<List<Suspect>, List<String>> changes,
      int columns) {
    this.unit = unit;
    this.clearance = clearance;
    this.reconciliation = reconciliation;
    this.changes = changes;
    this.columns = columns;
  }

  /**
   * The lines of the page, at most {@code columns} characters each.
   *
   * @param clearance required from guards without one of their own
   * @param changes for a set of suspects, the verdicts that change if they are put in
   */
  public static List<String> lines(
      PeopleUnit unit,
      long clearance,
      Reconciliation reconciliation,
      Map<List<Suspect>, List<String>> changes,
      int columns) {
    ReconcileText text = new ReconcileText(unit, clearance, reconciliation, changes, columns);
    text.write();
    return List.copyOf(text.lines);
  }

  private void write() {
    lines.add(TITLE + ", in " + unit.plural());
    section(
        "STOP: less than the clearance asked for was found there, whatever the tables say:",
        reconciliation.checks().stream()
            .map(Reconciliation.Result::check)
            .filter(check -> check.isBelow(clearance))
            .map(check -> gap(check) + ": found " + unit.fine(check.found(), Rounding.DOWN))
            .toList());
    gaps(Agreement.CLOSER, "Closer than the tables allow (dangerous):");
    gaps(Agreement.FARTHER, "Farther than the tables allow:");
    List<Suspicion> suspicions = reconciliation.suspicions();
    for (int i = 0; i < suspicions.size(); i++) {
      suspicion(suspicions.size() == 1 ? "" : "Group " + (i + 1) + ": ", suspicions.get(i));
    }
    section(
        "In doubt until the tables are put right, every pairing of:",
        reconciliation.suspects().stream().map(Measurand::name).distinct().toList());
    section("Narrowed:", reconciliation.narrowed().stream().map(this::narrowed).toList());
    gaps(Agreement.AGREES, "Agrees with the tables:");
    section(
        "Not compared: there is no such gap in that situation or along that axis; look at part,"
            + " guard, situation and axis:",
        notCompared());
    lines.add(summary());
  }

  private String summary() {
    return count(reconciliation.checks().size(), "check")
        + ": closer "
        + number(Agreement.CLOSER)
        + ", farther "
        + number(Agreement.FARTHER)
        + ", agrees "
        + number(Agreement.AGREES)
        + (notCompared().isEmpty() ? "" : ", not compared " + notCompared().size())
        + ".";
  }

  private List<String> notCompared() {
    return reconciliation.checks().stream()
        .filter(result -> result.expected().isEmpty())
        .map(result -> gap(result.check()))
        .toList();
  }

  private long number(Agreement agreement) {
    return expected(agreement).size();
  }

  private List<ExpectedGap> expected(Agreement agreement) {
    return reconciliation.checks().stream()
        .flatMap(result -> result.expected().stream())
        .filter(gap -> gap.says() == agreement)
        .toList();
  }

  private void gaps(Agreement agreement, String heading) {
    section(heading, expected(agreement).stream().map(this::gap).toList());
  }

  private String gap(ExpectedGap gap) {
    String by =
        gap.outside()
            .map(
                amount ->
                    ": "
                        + unit.fine(amount.ceiling(), Rounding.UP)
                        + (gap.says() == Agreement.CLOSER ? " too close" : " too far"))
            .orElse("");
    return gap(gap.check())
        + " along "
        + gap.axis().name().toLowerCase(java.util.Locale.ROOT)
        + ": found "
        + unit.fine(gap.check().found(), Rounding.NEAREST)
        + ", expected "
        + range(gap.range())
        + by;
  }

  private static String gap(Check check) {
    return check.vise().name()
        + " on "
        + check.machine().name()
        + ", handle to the "
        + check.handleTo().word()
        + ": "
        + check.part()
        + " – "
        + check.guard().map(Guard::name).orElse(SweptGuard.TABLE);
  }

  private void suspicion(String group, Suspicion suspicion) {
    List<List<Suspect>> choices = suspicion.choices();
    if (choices.isEmpty()) {
      section(
          group
              + "No set of up to "
              + Suspicion.LARGEST
              + " wrong readings explains "
              + count(suspicion.checks().size(), "check")
              + " together. Measure these gaps again:",
          suspicion.checks().stream().map(check -> gap(check.check())).toList());
      return;
    }
    int size = choices.get(0).size();
    String wrong = size == 1 ? "One wrong reading" : size + " wrong readings together";
    wrapped(
        group
            + wrong
            + (choices.size() == 1
                ? " would explain the checks:"
                : " would explain the checks, one of these " + choices.size() + " choices:"),
        0,
        2);
    for (List<Suspect> choice : choices) {
      wrapped(choice.stream().map(this::suspect).collect(Collectors.joining("; and ")), 2, 4);
      changes.getOrDefault(choice, List.of()).forEach(line -> wrapped("then " + line, 4, 6));
    }
    suspicion
        .tellsApart()
        .ifPresentOrElse(
            reading ->
                wrapped(
                    "Measure "
                        + name(reading)
                        + (choices.size() == 2
                            ? " by itself: it tells them apart."
                            : " by itself next: it rules some of them out."),
                    2,
                    4),
            () -> {
              if (choices.size() > 1) {
                wrapped("No single reading tells them apart: measure each of them again.", 2, 4);
              }
            });
  }

  private String suspect(Suspect suspect) {
    return name(suspect.reading())
        + " must be "
        + range(suspect.mustBe())
        + " (written "
        + (suspect.written().isSingle()
            ? unit.fine(suspect.written().lo().orElseThrow().floor(), Rounding.NEAREST)
            : range(suspect.written()))
        + ")";
  }

  private String narrowed(Narrowed narrowed) {
    return name(narrowed.reading())
        + ": "
        + range(narrowed.now())
        + " (was "
        + range(narrowed.was())
        + ")";
  }

  private static String name(Measurand reading) {
    return reading.reading() + " of " + reading.name();
  }

  private String range(ValueRange bounds) {
    Optional<Rational> lo = bounds.lo();
    Optional<Rational> hi = bounds.hi();
    String low = lo.map(end -> unit.fine(end.floor(), Rounding.DOWN)).orElse("");
    String high = hi.map(end -> unit.fine(end.ceiling(), Rounding.UP)).orElse("");
    if (lo.isEmpty() && hi.isEmpty()) {
      return "anything";
    }
    if (lo.isEmpty()) {
      return "at most " + high;
    }
    if (hi.isEmpty()) {
      return "at least " + low;
    }
    return low.equals(high) ? low : low + " to " + high;
  }

  private void section(String heading, List<String> entries) {
    if (!entries.isEmpty()) {
      wrapped(heading, 0, 2);
      entries.forEach(entry -> wrapped(entry, 2, 4));
    }
  }

  private void wrapped(String text, int first, int others) {
    lines.addAll(WrappedLines.wrapped(PlainText.forTerminal(text), first, others, columns));
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
