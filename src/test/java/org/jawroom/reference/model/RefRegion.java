package org.jawroom.reference.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.space.Span;

/**
 * The positions of the vise frame's origin for one turn and mount: any x of {@code xs} with any y
 * of {@code ys}.
 */
public record RefRegion(Orientation turn, RefMount mount, List<Span> xs, List<Span> ys) {

  public boolean isEmpty() {
    return xs.isEmpty() || ys.isEmpty();
  }

  public RefRegion within(Span x, Span y) {
    return new RefRegion(turn, mount, cut(xs, x), cut(ys, y));
  }

  /** The positions in both. */
  RefRegion meet(RefRegion other) {
    return new RefRegion(turn, mount, meet(xs, other.xs), meet(ys, other.ys));
  }

  private static List<Span> meet(List<Span> some, List<Span> others) {
    return some.stream().flatMap(span -> cut(others, span).stream()).toList();
  }

  static List<Span> cut(List<Span> spans, Span with) {
    if (with.isEmpty()) {
      return List.of();
    }
    return spans.stream()
        .filter(s -> s.lo() <= with.hi() && with.lo() <= s.hi())
        .map(s -> new Span(Math.max(s.lo(), with.lo()), Math.min(s.hi(), with.hi())))
        .toList();
  }

  /** The same points as disjoint intervals, ascending. */
  public static List<Span> merged(List<Span> spans) {
    List<Span> merged = new ArrayList<>();
    for (Span span : spans.stream().sorted(Comparator.comparingLong(Span::lo)).toList()) {
      Span last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && span.lo() <= last.hi()) {
        merged.set(merged.size() - 1, new Span(last.lo(), Math.max(last.hi(), span.hi())));
      } else {
        merged.add(span);
      }
    }
    return merged;
  }
}
