package org.jawroom.plausibility;

import java.util.Optional;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Slots;
import org.jawroom.shop.Vise;

/**
 * Vises whose base must hang far over a table's edge to be bolted down at all.
 *
 * <p>The rule: of all places where the bolts of some mount stand in slots, in any turn that vise
 * and machine allow, guards left aside, take the one where the base hangs least over an edge at the
 * end of its length. If even there it hangs over by more than a quarter of the base's length, say
 * so. Bolts are taken to have no thickness, so that the overhang told is never too large. Nothing
 * is said where a dimension that it needs is blank, or where the bolts reach no slots.
 */
final class OverhangWarnings {
  private static final long NONE = Long.MAX_VALUE;

  private final Machine machine;
  private final Axis direction;
  private final long reach;
  private final long[] lines;

  /** Of one machine, with whatever vise. */
  OverhangWarnings(Machine machine) {
    this.machine = machine;
    Slots slots = machine.slots();
    this.direction = slots.direction();
    this.reach = slots.length().orElse(size(direction)) / 2;
    this.lines = slotLines(slots);
  }

  Optional<Warning> of(Vise vise) {
    if (!vise.simple()
        || !vise.base().rearReach().isKnown()
        || !vise.base().frontReach().isKnown()) {
      return Optional.empty();
    }
    long length = vise.base().rearReach().length() + vise.base().frontReach().length();
    long least = least(vise, length);
    if (least == NONE || 4 * least <= length) {
      return Optional.empty();
    }
    return Optional.of(
        Warning.vise(
            vise.name(),
            "bolt_u",
            "on "
                + machine.name()
                + " at least "
                + SpokenLength.of(least)
                + " of its base, more than a quarter of its length, hangs over the table's edge wherever"
                + " it is bolted. Check bolt_u, the reaches and the slots"));
  }

  /** The least overhang, or one of no more than a quarter, over all turns and mounts. */
  private long least(Vise vise, long length) {
    long least = NONE;
    Set<Orientation> turns = machine.turns();
    for (Orientation turn : vise.turns()) {
      if (turns.contains(turn)) {
        for (Mount mount : vise.mounts()) {
          least = Math.min(least, least(vise, turn, mount));
          if (4 * least <= length && least != NONE) {
            return least;
          }
        }
      }
    }
    return least;
  }

  /**
   * The least overhang over an edge at the end of the base's length; {@link #NONE}: bolts reach no
   * slots.
   */
  private long least(Vise vise, Orientation turn, Mount mount) {
    if (!isKnown(mount)) {
      return NONE;
    }
    Axis across = direction.across();
    Runs along = Runs.EVERYWHERE;
    Runs over = Runs.EVERYWHERE;
    for (Bolt bolt : mount.bolts()) {
      along =
          along.meeting(
              new long[] {0}, -offset(turn, bolt, direction), play(turn, bolt, direction) + reach);
      over = over.meeting(lines, -offset(turn, bolt, across), play(turn, bolt, across));
    }
    if (along.isEmpty() || over.isEmpty()) {
      return NONE;
    }
    long rear = vise.base().rearReach().length();
    long front = vise.base().frontReach().length();
    boolean forward = turn.uSign() > 0;
    long lo = forward ? -rear : -front;
    long hi = forward ? front : rear;
    return (turn.uAxis() == direction ? along : over).leastOverhang(lo, hi, size(turn.uAxis()) / 2);
  }

  private static long offset(Orientation turn, Bolt bolt, Axis axis) {
    long u = bolt.u().length();
    long v = bolt.v().length();
    return axis == Axis.X ? turn.x(u, v) : turn.y(u, v);
  }

  private static long play(Orientation turn, Bolt bolt, Axis axis) {
    Dimension hole = turn.uAxis() == axis ? bolt.holeU() : bolt.holeV();
    return hole.length() / 2;
  }

  /** None where a blank leaves the places of the slots open. */
  private long[] slotLines(Slots slots) {
    long edge = -size(direction.across()) / 2;
    if (!slots.positions().isEmpty()) {
      return slots.positions().stream().mapToLong(position -> edge + position).toArray();
    }
    if (slots.needsPitch() && !slots.pitch().isKnown()) {
      return new long[0];
    }
    long pitch = slots.pitch().isKnown() ? slots.pitch().length() : 0;
    long centred = -(slots.count() - 1) * pitch / 2;
    long first = slots.first().isPresent() ? edge + slots.first().getAsLong() : centred;
    long[] lines = new long[slots.count()];
    for (int slot = 0; slot < lines.length; slot++) {
      lines[slot] = first + slot * pitch;
    }
    return lines;
  }

  private static boolean isKnown(Mount mount) {
    for (Bolt bolt : mount.bolts()) {
      if (!bolt.u().isKnown()
          || !bolt.v().isKnown()
          || !bolt.holeU().isKnown()
          || !bolt.holeV().isKnown()) {
        return false;
      }
    }
    return true;
  }

  private long size(Axis axis) {
    return axis == Axis.X ? machine.tableLength() : machine.tableWidth();
  }
}
