package org.jawroom.reference.space;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A product of closed intervals less open rectangles, decomposed along every line at which anything
 * changes. A decomposition independent of the solver's free space: it needs nothing but the
 * rectangles.
 */
public final class FreeCells {
  private FreeCells() {}

  /** Closed rectangles (some of them lines or points) whose union is exactly the free space. */
  public static List<Rect> of(List<Span> xs, List<Span> ys, List<Rect> forbidden) {
    List<Rect> rising = rising(forbidden);
    List<Rect> cells = new ArrayList<>();
    for (Span across : xs) {
      TreeSet<Long> lines = new TreeSet<>(List.of(across.lo(), across.hi()));
      for (Rect rect : rising) {
        if (across.lo() < rect.xLo() && rect.xLo() < across.hi()) {
          lines.add(rect.xLo());
        }
        if (across.lo() < rect.xHi() && rect.xHi() < across.hi()) {
          lines.add(rect.xHi());
        }
      }
      Long before = null;
      for (long line : lines) {
        if (before != null) {
          slab(before, line, ys, rising, cells);
        }
        slab(line, line, ys, rising, cells);
        before = line;
      }
    }
    return cells;
  }

  /** Whether the free space is empty. */
  public static boolean isEmpty(List<Span> xs, List<Span> ys, List<Rect> forbidden) {
    List<Rect> rising = rising(forbidden);
    for (Span across : xs) {
      // A free position can be shifted down to an end of its span or to a far edge.
      if (isFree(across.lo(), ys, rising)) {
        return false;
      }
      for (Rect rect : rising) {
        if (across.lo() < rect.xHi()
            && rect.xHi() <= across.hi()
            && isFree(rect.xHi(), ys, rising)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isFree(long line, List<Span> ys, List<Rect> rising) {
    List<Rect> cells = new ArrayList<>();
    slab(line, line, ys, rising, cells);
    return !cells.isEmpty();
  }

  /** The rectangles with an interior, in ascending order of their lower edges. */
  private static List<Rect> rising(List<Rect> forbidden) {
    List<Rect> rising = new ArrayList<>(forbidden);
    rising.removeIf(rect -> rect.xLo() >= rect.xHi() || rect.yLo() >= rect.yHi());
    rising.sort((a, b) -> Long.compare(a.yLo(), b.yLo()));
    return rising;
  }

  private static void slab(long from, long to, List<Span> ys, List<Rect> rising, List<Rect> cells) {
    for (Span along : ys) {
      long free = along.lo();
      for (Rect rect : rising) {
        if (rect.yLo() > along.hi()) {
          break;
        }
        boolean covers =
            from == to
                ? rect.xLo() < from && from < rect.xHi()
                : rect.xLo() <= from && to <= rect.xHi();
        if (covers) {
          if (rect.yLo() >= free) {
            cells.add(new Rect(from, to, free, rect.yLo()));
          }
          free = Math.max(free, rect.yHi());
        }
      }
      if (free <= along.hi()) {
        cells.add(new Rect(from, to, free, along.hi()));
      }
    }
  }
}
