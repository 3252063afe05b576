package org.jawroom.clearance.guard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;

/**
 * A guard in one situation at a fixed x and y instead of swept along them; along z it stays swept.
 *
 * @param swept the same guard swept over the whole travel, or at the load position
 * @param middle its limits with both axes at mid-travel
 * @param fromNose its z limits from the spindle nose; empty if its height does not follow the nose
 */
public record GuardStance(SweptGuard swept, Rectangle middle, Optional<Interval> fromNose) {

  /**
   * All guards that {@link MachineGuards} lists at worst, in the same order.
   *
   * @param bedHeight of the vise; while cutting, the shortest tool must clear it
   */
  public static List<GuardStance> all(Settings settings, Machine machine, long bedHeight) {
    Blanks blanks = new Blanks();
    List<GuardStance> stances = new ArrayList<>();
    for (SweptGuard swept :
        MachineGuards.of(settings, machine, Setup.PLAIN, bedHeight, Certainty.AT_WORST, blanks)
            .swept()) {
      stances.add(
          swept
              .guard()
              .map(guard -> of(swept, new GuardSweep(machine, guard, Setup.PLAIN.stops())))
              .orElseGet(
                  () ->
                      new GuardStance(
                          swept,
                          new Rectangle(swept.box().x(), swept.box().y()),
                          Optional.empty())));
    }
    return stances;
  }

  /**
   * The limits of a guard in the table's plane, every axis at mid-travel.
   *
   * @param guard of {@code machine}, its gap not blank
   */
  public static Rectangle atMidTravel(Machine machine, Guard guard) {
    return new GuardSweep(machine, guard, Setup.PLAIN.stops()).atMidTravel();
  }

  private static GuardStance of(SweptGuard swept, GuardSweep sweep) {
    return new GuardStance(
        swept,
        sweep.atMidTravel(),
        sweep.goesWithNose() ? Optional.of(sweep.guard().limits().z()) : Optional.empty());
  }

  /** The guard with the spindle at the given offsets from mid-travel along x and y. */
  public SweptGuard shifted(long alongX, long alongY) {
    Rectangle plan = middle.at(swept.moves().x() ? alongX : 0, swept.moves().y() ? alongY : 0);
    return swept.at(new Box(plan.x(), plan.y(), swept.box().z()));
  }
}
