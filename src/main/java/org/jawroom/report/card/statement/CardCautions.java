package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.TurnedRectangle;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.vise.Swivel;

/** The cautions of a card: the general ones, then those of this pairing. */
public record CardCautions(PeopleUnit unit, CardSubject subject) {

  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Local codes and the machine maker's book come first; the check on the machine is yours.");
    subject.job().map(PartFacts::cautions).ifPresent(lines::addAll);
    lines.add("Door and guards shut.");
    lines.add("First pass: rapids turned down, single block, a hand on the stop.");
    lines.add("Gaps are those of the bare vise: watch tool, part and chips yourself.");
    List<String> pinches = new PinchGaps(unit, subject.pairs()).words();
    if (!pinches.isEmpty()) {
      lines.add(
          "Pinch (ISO 13854: finger 25, hand 100 mm): "
              + String.join("; ", pinches)
              + ". Hands out while an axis moves.");
    }
    subject.outcome().vise().swivel().ifPresent(swivel -> addTurned(swivel, lines));
    addDoubts(lines);
    return lines;
  }

  /** One degree off moves a point by tan 1° = 0.0175 of its distance from the pivot. */
  private void addTurned(Swivel swivel, List<String> lines) {
    lines.add(
        "The angle counts as exact: one degree off moves an end by 1.8 % of its distance from the"
            + " pivot.");
    lines.add(
        "What turns is judged up to "
            + unit.brief(TurnedRectangle.STRIP, Rounding.UP)
            + " "
            + unit.word()
            + " too large, also where room to tap it square is computed. With its jaws square it may"
            + " hit what it clears at the angle: see "
            + swivel.of()
            + ".");
  }

  private void addDoubts(List<String> lines) {
    Outcome outcome = subject.outcome();
    List<String> not = LookedFor.not(outcome.machine());
    if (!not.isEmpty()) {
      lines.add("Nobody looked for these on this machine: " + String.join(", ", not) + ".");
    }
    boolean machine = outcome.machine().provenance().assumedExact();
    boolean vise = outcome.vise().provenance().assumedExact();
    if (machine || vise) {
      lines.add(
          "Tolerance taken as 0, since none is given, for "
              + (machine && vise ? "machine and vise." : machine ? "the machine." : "the vise."));
    }
    List<OpenReading> open =
        subject.job().map(job -> job.openReadings()).orElseGet(() -> outcome.openReadings());
    if (!open.isEmpty()) {
      lines.add(
          "This card holds "
              + new OpenWords(unit).whatever(open)
              + ". The drawing hatches the bands in which such faces stand; a solid edge is at worst.");
    }
    addPlace(subject.place(), lines);
    subject.warnings().forEach(lines::add);
  }

  private void addPlace(Recommendation place, List<String> lines) {
    place.overhang().stream()
        .filter(over -> over > 0)
        .forEach(
            over ->
                lines.add(
                    "Its base hangs "
                        + unit.brief(over, Rounding.UP)
                        + " "
                        + unit.word()
                        + " over a table edge."));
    for (Side side : Side.values()) {
      subject
          .reachShort()
          .map(sides -> sides.get(side))
          .filter(shortBy -> shortBy > 0)
          .ifPresent(
              shortBy ->
                  lines.add(
                      "The spindle does not reach the last "
                          + unit.brief(shortBy, Rounding.UP)
                          + " "
                          + unit.word()
                          + " between the jaws, "
                          + side.word()
                          + "."));
    }
  }
}
