package org.jawroom.clearance.gap;

import java.util.List;
import org.jawroom.clearance.guard.GuardStance;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;

/**
 * The gaps of a vise at single moments instead of over the whole travel and opening range. The
 * swept gap of a pair is a lower bound of its gap at every moment of the situation; if it is 0 or
 * more, it is attained at some moment.
 */
public final class MomentGaps {
  private final Settings settings;
  private final Machine machine;
  private final List<Part> parts;
  private final List<GuardStance> stances;

  private MomentGaps(
      Settings settings, Machine machine, List<Part> parts, List<GuardStance> stances) {
    this.settings = settings;
    this.machine = machine;
    this.parts = parts;
    this.stances = stances;
  }

  /**
   * The gaps of a pairing without blanks.
   *
   * @param bedHeight of the vise
   * @param parts of the vise and the bolts in use
   */
  public static MomentGaps of(
      Settings settings, Machine machine, long bedHeight, List<Part> parts) {
    return new MomentGaps(
        settings, machine, List.copyOf(parts), GuardStance.all(settings, machine, bedHeight));
  }

  /**
   * Every pair that counts in the moment's situation, with the vise frame's origin at (x, y), in
   * ascending order of margin; ties keep the order of precedence.
   *
   * @param moment with an opening within the vise's range and the spindle within reach
   * @throws IllegalArgumentException if the spindle is out of reach
   */
  public List<Limit> at(MachineState moment, Orientation turn, long x, long y) {
    long alongX = moment.spindleX() - machine.spindleX();
    long alongY = moment.spindleY() - machine.spindleY();
    if (Math.abs(alongX) > machine.reachX() || Math.abs(alongY) > machine.reachY()) {
      throw new IllegalArgumentException("spindle out of reach: " + moment);
    }
    List<SweptGuard> standing =
        stances.stream()
            .filter(stance -> stance.swept().situation() == moment.situation())
            .map(stance -> stance.shifted(alongX, alongY))
            .toList();
    List<Pair> pairs = Pair.all(settings, parts, standing);
    return MarginField.of(pairs, turn, Interval.of(moment.opening(), moment.opening()))
        .limits(x, y);
  }
}
