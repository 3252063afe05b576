package org.jawroom.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.job.JobVerdict;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.matrix.MatrixWorkbook;
import org.jawroom.report.matrix.PairingsSheet;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.matrix.TallySheet;
import org.jawroom.report.set.SetWords;
import org.jawroom.report.standing.StandingSheet;
import org.jawroom.report.standing.StandingWords;
import org.jawroom.report.tally.JobTally;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.tally.Worst;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;

/**
 * The closing lines for the terminal: counts, the worst pairings, the best vise of each machine and
 * the paths of the reports. The words are ASCII; names may contain anything but control characters.
 */
public final class Summary {
  private static final int MACHINES_SHOWN = 20;

  private final Shop shop;
  private final Totals totals;
  private final PeopleUnit unit;
  private final boolean workbook;
  private final boolean detailed;
  private final List<String> lines = new ArrayList<>();

  private Summary(Totals totals, PeopleUnit unit, List<Path> reports) {
    this.workbook = reports.stream().anyMatch(report -> report.endsWith(MatrixWorkbook.FILE));
    this.detailed = workbook && totals.pairings() <= ReportOptions.DETAILED;
    this.shop = totals.shop();
    this.totals = totals;
    this.unit = unit;
  }

  /**
   * Returns the lines, without line ends.
   *
   * @param beside what was worked out beside the pairings
   * @param reports the files written
   */
  public static List<String> lines(
      Totals totals, ShopOutcomes beside, PeopleUnit unit, List<Path> reports) {
    Summary summary = new Summary(totals, unit, reports);
    summary.counts();
    summary.jobs();
    summary.standing(beside.standing());
    summary.sets(beside.sets());
    summary.worst();
    summary.best();
    for (Path report : reports) {
      summary.add("Written: " + report);
    }
    return summary.lines;
  }

  private void counts() {
    add(
        totals.pairings()
            + " pairings: "
            + shop.machines().size()
            + " machines x "
            + shop.vises().size()
            + " vises");
    for (Finding finding : Finding.values()) {
      long count = totals.all().count(finding);
      if (count > 0) {
        add("  " + padded(String.valueOf(count), 5) + "  " + finding.words());
      }
    }
  }

  /** Prints for each job its best outcome over all pairings. */
  private void jobs() {
    if (shop.jobs().isEmpty() || totals.pairings() == 0) {
      return;
    }
    long unchecked = 0;
    long inDoubt = 0;
    Map<JobVerdict, Long> best = new EnumMap<>(JobVerdict.class);
    for (int job = 0; job < shop.jobs().size(); job++) {
      JobTally its = totals.jobs().of(job);
      if (its.isHeldInDoubt()) {
        inDoubt++;
      } else if (its.isHeldUnchecked()) {
        unchecked++;
      } else {
        best.merge(best(its), 1L, Long::sum);
      }
    }
    add(shop.jobs().size() + " jobs:");
    job(best.get(JobVerdict.HELD), "held by some vise on some machine");
    job(unchecked == 0 ? null : unchecked, "held, but tool's height or load not checked");
    job(
        inDoubt == 0 ? null : inDoubt,
        "held, but in doubt: checks say that a reading may be wrong");
    job(best.get(JobVerdict.UNKNOWN), "unknown: not measured, and held by none that is");
    job(best.get(JobVerdict.NOT_HELD), "not held anywhere");
  }

  /** A line for each machine on which something stands. */
  private void standing(List<StandingOutcome> standing) {
    Map<String, List<StandingOutcome>> machines =
        standing.stream()
            .collect(
                Collectors.groupingBy(
                    one -> one.standing().machine().name(),
                    LinkedHashMap::new,
                    Collectors.toList()));
    if (!machines.isEmpty()) {
      add("Standing now:");
    }
    machines.entrySet().stream()
        .limit(MACHINES_SHOWN)
        .forEach(
            machine ->
                add(
                    "  "
                        + machine.getKey()
                        + ": "
                        + machine.getValue().stream()
                            .map(new StandingWords(unit)::brief)
                            .collect(Collectors.joining("; "))));
    more(machines.size() - MACHINES_SHOWN, workbook ? StandingSheet.NAME : "");
  }

  private void sets(List<SetOutcome> sets) {
    SetWords words = new SetWords(unit, shop.settings());
    for (ViseSet set : shop.sets()) {
      List<SetOutcome> its = sets.stream().filter(one -> one.set().equals(set)).toList();
      List<String> fits =
          its.stream()
              .filter(one -> one.fits() == SetOutcome.Fits.YES)
              .map(
                  one ->
                      PlainText.forTerminal(one.machine().name())
                          + (words.finding(one) == Finding.FITS ? "" : " (with a caveat)"))
              .limit(MACHINES_SHOWN)
              .toList();
      long unknown = its.stream().filter(one -> one.fits() == SetOutcome.Fits.UNKNOWN).count();
      add(
          "set "
              + PlainText.forTerminal(set.name())
              + ": "
              + (fits.isEmpty() ? "fits on no machine" : "fits on " + String.join(", ", fits))
              + (unknown == 0 ? "" : "; unknown on " + unknown));
    }
  }

  private static JobVerdict best(JobTally its) {
    if (its.held() > 0) {
      return JobVerdict.HELD;
    }
    return its.unknown() > 0 ? JobVerdict.UNKNOWN : JobVerdict.NOT_HELD;
  }

  private void job(Long count, String words) {
    if (count != null) {
      add("  " + padded(count.toString(), 5) + "  " + words);
    }
  }

  private void worst() {
    Worst worst = totals.worst();
    if (worst.missed() == 0) {
      return;
    }
    add("Worst pairings:");
    for (Outcome outcome : worst.kept()) {
      add(
          "  "
              + figure(outcome)
              + "  "
              + outcome.machine().name()
              + " x "
              + outcome.vise().name()
              + ": "
              + limit(outcome));
    }
    more(worst.missed() - worst.kept().size(), detailed ? PairingsSheet.NAME : "");
  }

  private void best() {
    if (totals.pairings() == 0) {
      return;
    }
    add("Best vise of each machine:");
    int shown = Math.min(shop.machines().size(), MACHINES_SHOWN);
    for (int machine = 0; machine < shown; machine++) {
      String best =
          totals
              .machine(machine)
              .best()
              .map(Advice::outcome)
              .map(
                  outcome ->
                      outcome.vise().name()
                          + ", "
                          + figure(outcome).strip()
                          + " to spare"
                          + limited(outcome))
              .orElse("none");
      add("  " + shop.machines().get(machine).name() + ": " + best);
    }
    more(shop.machines().size() - shown, workbook ? TallySheet.BY_MACHINE : "");
  }

  private String limited(Outcome outcome) {
    return switch (Finding.of(outcome)) {
      case FITS -> "";
      case LIMITED -> " (limited: " + new Words(unit).opening(outcome) + ")";
      default -> " (" + Finding.of(outcome).brief() + ")";
    };
  }

  /**
   * @param sheet the sheet that lists the rest; empty if none does
   */
  private void more(long number, String sheet) {
    if (number > 0) {
      add(
          "  and "
              + number
              + " more: see "
              + (sheet.isEmpty() ? PairingsCsv.FILE : sheet + " in " + MatrixWorkbook.FILE));
    }
  }

  private String figure(Outcome outcome) {
    OptionalLong margin = outcome.margin();
    return padded(unit.text(margin.getAsLong(), Rounding.DOWN), 8) + " " + unit.word();
  }

  private static String limit(Outcome outcome) {
    return outcome.recommended().flatMap(Recommendation::limit).map(Summary::limit).orElse("");
  }

  private static String limit(Limit limit) {
    return Words.limit(limit).replace(" · ", " - ");
  }

  /** Right-aligns by hand, because format strings write digits as the locale does. */
  private static String padded(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }

  private void add(String line) {
    lines.add(PlainText.forTerminal(line));
  }
}
