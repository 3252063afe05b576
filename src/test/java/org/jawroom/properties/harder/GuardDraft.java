package org.jawroom.properties.harder;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;

/** A guard to be changed; a frame's box without end to start from. */
final class GuardDraft {
  String name;
  String kind = "other";
  Axes carriedBy = Axes.NONE;
  When when = When.ALWAYS;
  Optional<Side> side = Optional.empty();
  Dimension gap = Dimension.NONE;
  Interval x = Interval.ALL;
  Interval y = Interval.ALL;
  Interval z = Interval.ALL;
  OptionalLong clearance = OptionalLong.empty();
  OptionalLong tolerance = OptionalLong.empty();

  GuardDraft(String name) {
    this.name = name;
  }

  static GuardDraft of(Guard guard) {
    GuardDraft draft = new GuardDraft(guard.name());
    draft.kind = guard.kind();
    draft.carriedBy = guard.carriedBy();
    draft.when = guard.when();
    draft.side = guard.side();
    draft.gap = guard.gap();
    draft.x = guard.limits().x();
    draft.y = guard.limits().y();
    draft.z = guard.limits().z();
    draft.clearance = guard.clearance();
    draft.tolerance = guard.tolerance();
    return draft;
  }

  Guard build() {
    return new Guard(
        name, kind, carriedBy, when, side, gap, new Box(x, y, z), clearance, tolerance);
  }
}
