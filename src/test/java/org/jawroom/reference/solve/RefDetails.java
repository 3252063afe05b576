package org.jawroom.reference.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.model.RefGuard;
import org.jawroom.reference.model.RefGuard.Block;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefMount;
import org.jawroom.reference.model.RefPair;
import org.jawroom.reference.model.RefPair.Field;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.solve.RefChoice.Spot;
import org.jawroom.reference.solve.ReferenceOutcome.Limiting;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;

/** The reported values of one placement over one opening range. */
final class RefDetails {
  private final RefModel model;
  private final Span openings;
  private final Spot spot;
  private final Facing facing;
  private final List<RefPair> pairs;

  RefDetails(RefModel model, Span openings, Spot spot) {
    this.model = model;
    this.openings = openings;
    this.spot = spot;
    this.facing = Facing.of(spot.region().turn());
    this.pairs = model.pairs(spot.region().mount());
  }

  Place place() {
    RefPair limiting = null;
    long margin = RefMargin.NO_LIMIT;
    for (RefPair pair : pairs) {
      long here = field(pair).margin(spot.x(), spot.y());
      if (here < margin) {
        margin = here;
        limiting = pair;
      }
    }
    RefMount mount = spot.region().mount();
    Orientation turn = spot.region().turn();
    List<Integer> slots = mount.slotsAt(turn, spot.x(), spot.y());
    return new Place(
        turn,
        mount.name(),
        mount.clamps() ? OptionalLong.empty() : OptionalLong.of(mount.thread()),
        spot.x(),
        spot.y(),
        slots,
        new RefChoice(model, openings).isSettable(spot),
        limiting == null ? OptionalLong.empty() : OptionalLong.of(margin),
        Optional.ofNullable(limiting).map(this::limiting),
        new RefReach(model).shortfall(turn, spot.x(), spot.y()),
        overhang(),
        handGap(),
        margin < 0 ? Optional.empty() : Optional.of(play(slots)),
        noseNotBelow());
  }

  /** The least gap round the handle while loading. */
  private OptionalLong handGap() {
    return pairs.stream()
        .filter(pair -> pair.part().isHandle() && !pair.cutting())
        .mapToLong(
            pair ->
                Math.max(
                    Math.max(
                        x(pair.part()).gap(pair.block().x()), y(pair.part()).gap(pair.block().y())),
                    pair.zGap()))
        .min();
  }

  private Field field(RefPair pair) {
    return pair.field(facing, model.u(pair.part(), openings));
  }

  private Span x(RefPart part) {
    return facing.x(model.u(part, openings), part.v()).shifted(spot.x());
  }

  private Span y(RefPart part) {
    return facing.y(model.u(part, openings), part.v()).shifted(spot.y());
  }

  private Limiting limiting(RefPair pair) {
    Block guard = pair.block();
    Span px = x(pair.part());
    Span py = y(pair.part());
    long gapX = px.gap(guard.x());
    long gapY = py.gap(guard.y());
    long most = Math.max(Math.max(gapX, gapY), pair.zGap());
    Axis axis = gapY == most ? Axis.Y : gapX == most ? Axis.X : Axis.Z;
    return new Limiting(
        pair.guard().name(),
        pair.part().name(),
        axis,
        pair.cutting() ? Situation.CUTTING : Situation.LOADING,
        opening(
            pair.part(), axis, axis == Axis.X ? px : py, axis == Axis.X ? guard.x() : guard.y()),
        pair.required(),
        pair.tolerance());
  }

  private Optional<JawEnd> opening(RefPart part, Axis axis, Span swept, Span guard) {
    if (axis == Axis.Z || (axis == Axis.X) != facing.alongX()) {
      return Optional.of(JawEnd.ANY);
    }
    long above = guard.lo() - swept.hi();
    long below = swept.lo() - guard.hi();
    if (above == below) {
      return Optional.empty();
    }
    boolean highInTable = above > below;
    boolean highInVise = highInTable == facing.sign() > 0;
    long min = model.vise.opening().lo();
    long max = model.vise.opening().hi();
    long s0 = openings.lo();
    long s1 = openings.hi();
    long closed = highInVise ? part.hi(s0, min, max) : -part.lo(s0, min, max);
    long open = highInVise ? part.hi(s1, min, max) : -part.lo(s1, min, max);
    return Optional.of(closed == open ? JawEnd.ANY : closed > open ? JawEnd.CLOSED : JawEnd.OPEN);
  }

  private OptionalLong overhang() {
    RefPart base = model.base();
    if (base == null) {
      return OptionalLong.empty();
    }
    Span x = x(base);
    Span y = y(base);
    long halfX = model.machine.tableLength() / 2;
    long halfY = model.machine.tableWidth() / 2;
    long most = Math.max(0, Math.max(x.hi() - halfX, -halfX - x.lo()));
    most = Math.max(most, Math.max(y.hi() - halfY, -halfY - y.lo()));
    return Length.isBounded(most) ? OptionalLong.of(most) : OptionalLong.empty();
  }

  private List<Long> play(List<Integer> slots) {
    RefRegion held = model.overhanging(spot.region().mount().holdsIn(spot.region().turn(), slots));
    Span x = only(held.xs());
    Span y = only(held.ys());
    long left = spot.x() - x.lo();
    long right = x.hi() - spot.x();
    long front = spot.y() - y.lo();
    long rear = y.hi() - spot.y();
    for (RefPair pair : pairs) {
      Rect hit = field(pair).below(0);
      if (hit == null || hit.xLo() >= hit.xHi() || hit.yLo() >= hit.yHi()) {
        continue;
      }
      if (hit.yLo() < spot.y() && spot.y() < hit.yHi()) {
        if (hit.xHi() <= spot.x()) {
          left = Math.min(left, spot.x() - hit.xHi());
        } else {
          right = Math.min(right, hit.xLo() - spot.x());
        }
      }
      if (hit.xLo() < spot.x() && spot.x() < hit.xHi()) {
        if (hit.yHi() <= spot.y()) {
          front = Math.min(front, spot.y() - hit.yHi());
        } else {
          rear = Math.min(rear, hit.yLo() - spot.y());
        }
      }
    }
    return List.of(left, right, front, rear);
  }

  private static Span only(List<Span> spans) {
    if (spans.size() != 1) {
      throw new IllegalStateException("studs in given slots leave one interval, not " + spans);
    }
    return spans.get(0);
  }

  private OptionalLong noseNotBelow() {
    boolean risers = model.guards.stream().anyMatch(guard -> guard.rising() != null);
    if (!risers || model.machine.noseMin().isBlank() || model.machine.noseMax().isBlank()) {
      return OptionalLong.empty();
    }
    long low = RefLevel.values(model.machine.noseMin(), 0).lo();
    long top = RefLevel.values(model.machine.noseMax(), 0).hi();
    long least = low;
    for (RefGuard guard : model.guards) {
      for (RefPart part : withMount()) {
        if (guard.rising() == null || part.cutting() == null) {
          continue;
        }
        Block block = guard.rising();
        long need = guard.clearance() + guard.tolerance() + part.tolerance();
        if (Math.max(x(part).gap(block.x()), y(part).gap(block.y())) >= need) {
          continue;
        }
        // Clear with the nose at or above `over` (the guard above the part), or at or below
        // `under`.
        long over = part.cutting().hi() + need - block.z().lo();
        long under = part.cutting().lo() - need - block.z().hi();
        if (under >= over || under >= top) {
          continue;
        }
        if (over > top || !Length.isBounded(over)) {
          return OptionalLong.empty();
        }
        least = Math.max(least, over);
      }
    }
    return OptionalLong.of(least);
  }

  private List<RefPart> withMount() {
    List<RefPart> parts = new ArrayList<>(model.body);
    parts.addAll(spot.region().mount().parts());
    return parts;
  }
}
