package org.jawroom.reference;

import java.util.List;
import org.jawroom.geometry.Turn;

/** Where the vise frame's origin may stand for one turn and mount: any x of {@code xs}, any y of {@code ys}. */
record RefRegion(Turn turn, RefMount mount, List<Span> xs, List<Span> ys) {

  boolean isEmpty() {
    return xs.isEmpty() || ys.isEmpty();
  }

  RefRegion within(Span x, Span y) {
    return new RefRegion(turn, mount, cut(xs, x), cut(ys, y));
  }

  static List<Span> cut(List<Span> spans, Span with) {
    return spans.stream()
        .filter(s -> s.lo() <= with.hi() && with.lo() <= s.hi())
        .map(s -> new Span(Math.max(s.lo(), with.lo()), Math.min(s.hi(), with.hi())))
        .toList();
  }
}
