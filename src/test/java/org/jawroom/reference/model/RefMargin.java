package org.jawroom.reference.model;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.jawroom.geometry.Length;
import org.jawroom.reference.model.RefPair.Field;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;

/**
 * The largest margin over an area.
 *
 * <p>The set of positions with margin below t grows with t. The greatest t with a position left is
 * one at which something closes: an edge reaches an end of the region or of a blocked rectangle,
 * two opposite edges meet, or a pair that only z kept clear becomes active. All such t are
 * collected, sorted and searched.
 */
public final class RefMargin {
  /** Nothing can be hit. */
  public static final long NO_LIMIT = Long.MAX_VALUE;

  /** A reading without end leaves a part or a guard without end: no margin. */
  public static final long ENDLESS_LOSS = -Length.ENDLESS;

  /** A hole without end lets the vise stand at any distance: no limit to the margin either. */
  public static final long ENDLESS_ROOM = Length.ENDLESS / 16;

  private RefMargin() {}

  /** The largest whole margin over a non-empty area; {@link #NO_LIMIT} without fields. */
  public static long largest(RefArea area) {
    if (area.fields().isEmpty()) {
      return NO_LIMIT;
    }
    if (area.fields().stream().anyMatch(Field::isEndless)) {
      return ENDLESS_LOSS;
    }
    if (!area.isEmpty(ENDLESS_ROOM)) {
      return ENDLESS_ROOM;
    }
    long[] candidates = candidates(area);
    int low = 0;
    int high = candidates.length - 1;
    if (area.isEmpty(candidates[0])) {
      throw new IllegalStateException("nothing left at the least candidate");
    }
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (area.isEmpty(candidates[middle])) {
        high = middle - 1;
      } else {
        low = middle;
      }
    }
    long best = candidates[low];
    if (!area.isEmpty(best + 1)) {
      throw new IllegalStateException("the largest margin was not among the candidates");
    }
    return best;
  }

  /** Half of an end without end is none either. */
  public static boolean isFinite(long margin) {
    return -ENDLESS_ROOM < margin && margin < ENDLESS_ROOM;
  }

  /** The fields that are not dominated by another one. */
  static List<Field> undominated(List<Field> all) {
    List<Field> distinct = new ArrayList<>(new LinkedHashSet<>(all));
    List<Field> kept = new ArrayList<>();
    for (Field field : distinct) {
      boolean needless = false;
      for (Field other : distinct) {
        needless |= other != field && other.atMost(field);
      }
      if (!needless) {
        kept.add(field);
      }
    }
    return kept;
  }

  private static long[] candidates(RefArea area) {
    Set<Long> lowX = new LinkedHashSet<>();
    Set<Long> highX = new LinkedHashSet<>();
    Set<Long> lowY = new LinkedHashSet<>();
    Set<Long> highY = new LinkedHashSet<>();
    LongStream.Builder found = LongStream.builder();
    for (Field field : area.fields()) {
      lowX.add(field.aX());
      highX.add(field.bX());
      lowY.add(field.aY());
      highY.add(field.bY());
      found.add(field.flat());
    }
    area.region().xs().forEach(span -> ends(span, lowX, highX, found));
    area.region().ys().forEach(span -> ends(span, lowY, highY, found));
    for (Rect rect : area.blocked()) {
      ends(new Span(rect.xLo(), rect.xHi()), lowX, highX, found);
      ends(new Span(rect.yLo(), rect.yHi()), lowY, highY, found);
    }
    meetings(lowX, highX, found);
    meetings(lowY, highY, found);
    long[] sorted = found.build().filter(RefMargin::isFinite).sorted().distinct().toArray();
    // Below all candidates the state is that just below the least of them.
    long[] withLeast = new long[sorted.length + 1];
    System.arraycopy(sorted, 0, withLeast, 1, sorted.length);
    withLeast[0] = sorted[0] - 1;
    return withLeast;
  }

  /** The thresholds t at which an edge a − t or b + t reaches an end of the span. */
  private static void ends(Span span, Set<Long> low, Set<Long> high, LongStream.Builder found) {
    for (long a : low) {
      found.add(a - span.lo());
      found.add(a - span.hi());
    }
    for (long b : high) {
      found.add(span.lo() - b);
      found.add(span.hi() - b);
    }
  }

  /** The thresholds t at which a − t and b + t meet, rounded down to the lattice. */
  private static void meetings(Set<Long> low, Set<Long> high, LongStream.Builder found) {
    for (long a : low) {
      for (long b : high) {
        found.add(Math.floorDiv(a - b, 2));
      }
    }
  }
}
