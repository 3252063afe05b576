package org.jawroom.placement.set;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.obstacle.SweptGuards;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.job.Beside;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.Job;
import org.jawroom.shop.vise.Vise;

/**
 * The jobs that the vises of a set hold where they stand in their row.
 *
 * <p>A job is held by a vise of the row if the vise alone would hold it in that very place, turn
 * and mount, and besides
 *
 * <ul>
 *   <li>the workpiece stays at least the spacing away, along the slots, from all that the other
 *       vises sweep over their full opening ranges in both situations, handles included;
 *   <li>all vises and the workpiece together are not too heavy for the table; and
 *   <li>a head that comes as low as the shortest tool lets it over this vise still clears the
 *       others, which may be taller.
 * </ul>
 *
 * <p>The rule is conservative: a workpiece that reaches over a low neighbour is not held, and the
 * row is not moved to suit a job. The other vises are bare; two workpieces side by side are not
 * compared.
 */
public final class SetJobs {
  private SetJobs() {}

  /**
   * Those of the jobs that one vise holds, in the given order.
   *
   * @param row a set that fits
   * @param at the vise, 0 the leftmost
   */
  public static List<JobOutcome> held(
      PreparedMachine machine, SetOutcome row, int at, List<Job> jobs) {
    SetOutcome.Stand stand = row.stands().get(at);
    return headsClearOthers(machine, row, at)
        ? JobPairing.heldInRow(
            machine,
            PreparedVise.on(machine, stand.vise()),
            stand.pairing().model(),
            beside(machine, row, at),
            jobs)
        : List.of();
  }

  private static Beside beside(PreparedMachine machine, SetOutcome row, int at) {
    long spacing = machine.settings().spacing();
    Interval room = Interval.ALL;
    List<Vise> others = new ArrayList<>();
    for (int other = 0; other < row.stands().size(); other++) {
      SetOutcome.Stand stand = row.stands().get(other);
      if (other < at) {
        room = Interval.of(Math.max(room.lo(), stand.extent().hi() + spacing), room.hi());
      } else if (other > at) {
        room = Interval.of(room.lo(), Math.min(room.hi(), stand.extent().lo() - spacing));
      }
      if (other != at) {
        others.add(stand.vise());
      }
    }
    return new Beside(
        row.stands().get(at).place(), machine.machine().slots().direction(), room, others);
  }

  private static boolean headsClearOthers(PreparedMachine machine, SetOutcome row, int at) {
    long bed = bedHeight(machine, row.stands().get(at));
    SweptGuards guards = machine.guards(bed).sorted();
    return row.stands().stream()
        .filter(other -> bedHeight(machine, other) > bed)
        .allMatch(other -> isClear(other, guards));
  }

  private static long bedHeight(PreparedMachine machine, SetOutcome.Stand stand) {
    return stand.vise().base().bedHeight() + machine.setup().riser();
  }

  private static boolean isClear(SetOutcome.Stand stand, SweptGuards guards) {
    Recommendation place = stand.place();
    Region region =
        stand.pairing().model().regions().stream()
            .filter(one -> one.turn() == place.handleTo())
            .filter(one -> one.fastening().equals(place.fastening()))
            .findFirst()
            .orElseThrow();
    return region.with(guards).field(stand.vise().opening()).margin(place.x(), place.y()) >= 0;
  }
}
