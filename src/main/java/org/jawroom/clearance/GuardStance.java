package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;

/**
 * A guard in one situation, standing rather than swept along x and y; along z it is as swept.
 *
 * @param swept the same guard over the whole travel, or at the load position
 * @param middle its limits with both axes at mid-travel
 * @param fromNose its z limits from the spindle nose; empty where its height does not go with the
 *     nose
 */
public record GuardStance(SweptGuard swept, Rectangle middle, Optional<Interval> fromNose) {

  /**
   * Every guard that {@link MachineGuards} lists, in its order; what needs a blank is left out as
   * there.
   *
   * @param bedHeight of the vise, over which the shortest tool must stand while cutting
   */
  public static List<GuardStance> all(Settings settings, Machine machine, long bedHeight) {
    Blanks blanks = new Blanks();
    List<GuardStance> stances = new ArrayList<>();
    for (SweptGuard swept :
        MachineGuards.of(settings, machine, Setup.PLAIN, bedHeight, blanks).swept()) {
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

  /** The guard where it stands with the spindle that far from mid-travel along x and y. */
  SweptGuard shifted(long alongX, long alongY) {
    Rectangle plan = middle.at(swept.moves().x() ? alongX : 0, swept.moves().y() ? alongY : 0);
    return swept.at(new Box(plan.x(), plan.y(), swept.box().z()));
  }
}
