package org.jawroom.placement.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.Job;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/**
 * The complete result for one job on one machine with one vise; every report reads this.
 *
 * @param place the placement over the openings that the job needs: for {@code held} the first in
 *     the order of preference, with the workpiece as work area; otherwise the one that comes
 *     nearest. Empty for {@code unknown}, if a blank leaves it open, and if no search takes place:
 *     {@link JobReason#MACHINE} to {@link JobReason#TURN}
 * @param shortfalls for {@code not held}: everything that fails, in the order of reasons. Collision
 *     and reach are checked only if a placement is searched for
 * @param partHeights the underside and the top of the workpiece above the table
 * @param toolRoom distance from the tip of the longest tool, with the nose at its highest, down to
 *     the top of the workpiece, no clearance or tolerance taken off; negative if the tool runs into
 *     it. Empty for {@code unknown} or if a column it needs is blank
 * @param loadRoom load capacity left with vise and workpiece on the table, kg, a workpiece of blank
 *     mass counted as a solid block of steel; negative if too heavy; empty likewise
 * @param shortestStickOut the least stick-out of a tool that reaches the top of the workpiece with
 *     the nose at the least height that {@code place} allows; empty if {@code place} has no such
 *     height
 * @param unchecked the requirements that a blank leaves unchecked; empty for {@code unknown}
 * @param open the columns of the open readings it needs, without duplicates, in table order; what
 *     is blank and only leaves something unchecked is not among them
 * @param inDoubt the readings of machine and vise that checks on the machine say may be wrong
 */
public record JobOutcome(
    Job job,
    Machine machine,
    Vise vise,
    JobVerdict verdict,
    Optional<Recommendation> place,
    List<Shortfall> shortfalls,
    Interval partHeights,
    OptionalLong toolRoom,
    Optional<BigDecimal> loadRoom,
    OptionalLong shortestStickOut,
    List<Unchecked> unchecked,
    List<Column> open,
    List<Measurand> inDoubt) {
  public JobOutcome {
    unchecked = List.copyOf(unchecked);
    shortfalls = List.copyOf(shortfalls);
    open = List.copyOf(open);
    inDoubt = List.copyOf(inDoubt);
  }

  /** What keeps it {@code unknown}: the columns of its open readings; else none. */
  public List<Column> missing() {
    return verdict == JobVerdict.UNKNOWN ? open : List.of();
  }

  /** The open readings that it needs, in table order. */
  public List<OpenReading> openReadings() {
    List<OpenReading> readings = new ArrayList<>(OpenReading.of(machine, vise, open));
    if (open.contains(Column.TOOL_LENGTH)) {
      readings.add(OpenReading.of(job));
    }
    return readings;
  }

  public boolean isHeld() {
    return verdict == JobVerdict.HELD;
  }

  /**
   * The witness of the margin at the placement; empty without one, and if nothing listed can be
   * hit.
   */
  public Optional<Limit> limit() {
    return place.flatMap(Recommendation::limit);
  }

  /** The margin at the placement; empty likewise. */
  public OptionalLong margin() {
    return place.map(Recommendation::margin).orElse(OptionalLong.empty());
  }
}
