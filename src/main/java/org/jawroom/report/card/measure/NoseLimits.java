package org.jawroom.report.card.measure;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;

/**
 * The lowest permitted spindle nose, or why it is unknown. What goes with the nose passes over
 * every vise on the table, so that the highest of their limits counts.
 *
 * @param limits of all vises on the table whose place is known
 * @param unplaced the names of the others
 */
public record NoseLimits(
    PeopleUnit unit, Outcome outcome, List<OptionalLong> limits, List<String> unplaced) {

  public Item item() {
    return new Item("Nose:", words() + overOthers());
  }

  private String overOthers() {
    return unplaced.isEmpty() || withNose().isEmpty()
        ? ""
        : " Over "
            + String.join(", ", unplaced)
            + " (off the slots, as measured) nobody knows: jog and look.";
  }

  private String words() {
    if (withNose().isEmpty()) {
      return "nothing that goes with it is listed, no head either: watch it yourself.";
    }
    if (limits.stream().allMatch(OptionalLong::isPresent)) {
      long lowest = limits.stream().mapToLong(OptionalLong::getAsLong).max().orElseThrow();
      long stickOut = lowest - outcome.vise().base().bedHeight();
      return "not below "
          + up(lowest)
          + " "
          + unit.word()
          + " above the table top"
          + (limits.size() > 1 && unplaced.isEmpty() ? ", for all vises here" : "")
          + (stickOut > 0
              ? "; a tool that touches the vise's bed sticks out " + up(stickOut) + " at least."
              : ".");
    }
    Machine machine = outcome.machine();
    return machine.noseMin().isKnown() && machine.noseMax().isKnown()
        ? "even at its highest, "
            + String.join(", ", withNose())
            + " may come too near somewhere in the"
            + " travel: jog there slowly and set limits before you run."
        : "its heights are blank, so nobody knows how low it may come: jog and look.";
  }

  /** The guards that move up and down with the nose while cutting. */
  private List<String> withNose() {
    return outcome.machine().guardRows().stream()
        .filter(guard -> guard.when().countsWhileCutting())
        .filter(guard -> outcome.machine().movesAgainstTable(guard).z())
        .map(Guard::name)
        .toList();
  }

  private String up(long length) {
    return unit.brief(length, Rounding.UP);
  }
}
