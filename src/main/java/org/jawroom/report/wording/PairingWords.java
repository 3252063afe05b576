package org.jawroom.report.wording;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.report.wording.remedy.RemedyLine;
import org.jawroom.report.wording.remedy.RemedyWords;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** The words for a pairing in one unit, so that reports of every format say the same. */
public record PairingWords(PeopleUnit unit) {

  /** A stable identifier of the finding: {@code CLEAR}, {@code NOTHING_LISTED} ... */
  public static String finding(Outcome outcome) {
    return Finding.of(outcome).name();
  }

  /** Every finding with its sign, which nearly every font has, and its words. */
  public static Map<String, List<String>> findings() {
    Map<String, List<String>> findings = new LinkedHashMap<>();
    for (Finding finding : Finding.values()) {
      findings.put(finding.name(), List.of(finding.sign(), finding.words()));
    }
    return findings;
  }

  /** The margin that represents the pairing in a matrix; empty if there is none. */
  public static OptionalLong margin(Outcome outcome) {
    return outcome.margin();
  }

  /** The verdict as a sentence. */
  public String sentence(Outcome outcome) {
    return words().sentence(outcome);
  }

  /** What limits the pairing or why it has no place; several lines. */
  public String reason(Outcome outcome) {
    return words().reason(outcome);
  }

  /** Further remarks about the pairing. */
  public List<String> marks(Outcome outcome) {
    return words().marks(outcome);
  }

  /**
   * Where on the machine the nearest pair of part and guard meets: {@code jaws closed, table all
   * the way back}.
   */
  public String where(Outcome outcome, Limit limit, Interval openings) {
    return new WhereWords(unit, outcome.machine(), outcome.vise()).of(limit, openings);
  }

  /**
   * The single changes that would make it fit, least effort first; empty for a pairing that fits or
   * is unknown.
   */
  public List<String> changes(Advice pairing) {
    if (!RemedyLine.isAbout(pairing.outcome())) {
      return List.of();
    }
    return RemedyLine.of(pairing, new RemedyWords(unit)).stream()
        .map(line -> line.words() + (line.mind().isEmpty() ? "" : " (" + line.mind() + ")"))
        .toList();
  }

  /** The reasons why mounts do not hold, the nearest to holding first. */
  public List<String> misses(Outcome outcome, List<Miss> misses) {
    return new MissWords(unit, outcome.machine(), outcome.vise()).of(misses);
  }

  /** {@code table 900 × 300, travel 600 × 400}. */
  public String facts(Machine machine) {
    return words().table(machine);
  }

  /** {@code jaw 150, opens 0 to 150}. */
  public String facts(Vise vise) {
    return words().jaws(vise);
  }

  /** Remarks that apply to all pairings of a machine. */
  public static List<String> cautions(Machine machine) {
    return lines(Words.caution(machine));
  }

  /** Remarks that apply to all pairings of a vise. */
  public static List<String> cautions(Vise vise) {
    return lines(Words.caution(vise));
  }

  private static List<String> lines(String text) {
    return Stream.of(text.split("\n")).filter(line -> !line.isEmpty()).toList();
  }

  private Words words() {
    return new Words(unit);
  }
}
