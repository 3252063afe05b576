package org.jawroom.reference.solve;

import org.jawroom.geometry.Orientation;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;

/** How far the work area sticks out of the spindle's reach. */
public record RefReach(RefModel model) {

  private Span reachX() {
    long half = model.machine.travelX() / 2;
    return new Span(model.machine.spindleX() - half, model.machine.spindleX() + half);
  }

  private Span reachY() {
    long half = model.machine.travelY() / 2;
    return new Span(model.machine.spindleY() - half, model.machine.spindleY() + half);
  }

  /** The largest amount by which it sticks out on any side with the vise at (x, y). */
  public long shortfall(Orientation turn, long x, long y) {
    Span[] work = model.workArea(turn);
    return Math.max(out(x, work[0], reachX()), out(y, work[1], reachY()));
  }

  /** The least shortfall at any position of {@code cell}. */
  long least(Orientation turn, Rect cell) {
    Span[] work = model.workArea(turn);
    return Math.max(
        leastOut(new Span(cell.xLo(), cell.xHi()), work[0], reachX()),
        leastOut(new Span(cell.yLo(), cell.yHi()), work[1], reachY()));
  }

  /** The positions of {@code region} with a shortfall of {@code most} at most. */
  RefRegion within(RefRegion region, long most) {
    Span[] work = model.workArea(region.turn());
    long lowX = reachX().lo() - work[0].lo() - most;
    long highX = reachX().hi() - work[0].hi() + most;
    long lowY = reachY().lo() - work[1].lo() - most;
    long highY = reachY().hi() - work[1].hi() + most;
    return lowX <= highX && lowY <= highY
        ? region.within(new Span(lowX, highX), new Span(lowY, highY))
        : region.mount().nowhere(region.turn());
  }

  private static long out(long at, Span work, Span reach) {
    return Math.max(0, Math.max(reach.lo() - work.lo() - at, at + work.hi() - reach.hi()));
  }

  private static long leastOut(Span free, Span work, Span reach) {
    long low = reach.lo() - work.lo();
    long high = reach.hi() - work.hi();
    // Too wide for the reach: the least protrusion is at the centre, on the lattice on either side
    // of it.
    long middle = Math.floorDiv(low + high, 2);
    long least = Long.MAX_VALUE;
    for (long wanted : new long[] {low, high, middle, middle + 1}) {
      least = Math.min(least, out(free.clamp(wanted), work, reach));
    }
    return least;
  }
}
