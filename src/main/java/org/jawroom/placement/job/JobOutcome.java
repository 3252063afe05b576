package org.jawroom.placement.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.Column;
import org.jawroom.shop.Job;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/**
 * All that is found out about one job on one machine with one vise; every report reads this.
 *
 * @param place where the vise stands, the openings those the job needs: for {@code held} the place
 *     in the order of preference, its work area the part; else the one that comes nearest. Empty
 *     for {@code unknown}, where a blank leaves it open, and where there is no place to look for:
 *     {@link JobReason#MACHINE} to {@link JobReason#TURN}
 * @param shortfalls for {@code not held}: everything that fails, in the order of reasons; whether
 *     something is hit and whether the spindle reaches is asked only where there is a place to look
 *     for
 * @param partHeights the underside and the top of the part above the table
 * @param toolRoom with the nose at its highest, from the tip of the longest tool down to the part's
 *     top, no clearance and no tolerance taken off; negative if it runs into the part. Empty for
 *     {@code unknown} or where a blank leaves it open
 * @param loadRoom kg the table still carries with vise and part on, negative if too heavy; likewise
 * @param shortestStickOut the least that a tool must stick out of the nose to reach the part's top
 *     while the nose keeps as high as {@code place} says it must; empty where it says nothing of
 *     the nose
 * @param missing for {@code unknown}: the blank columns, once each, in the order of the tables
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
    List<Column> missing) {
  public JobOutcome {
    shortfalls = List.copyOf(shortfalls);
    missing = List.copyOf(missing);
  }

  public boolean isHeld() {
    return verdict == JobVerdict.HELD;
  }

  /** What limits the place; empty without a place, and where nothing listed can be hit. */
  public Optional<Limit> limit() {
    return place.flatMap(Recommendation::limit);
  }

  /** The margin at the place; empty likewise. */
  public OptionalLong margin() {
    return limit().stream().mapToLong(Limit::margin).findFirst();
  }
}
