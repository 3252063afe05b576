package org.jawroom.properties;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** A shop seen in a mirror that swaps left and right: x to −x, v to −v, turn left to turn right. */
final class Mirror {
  private Mirror() {}

  static Machine machine(Machine m) {
    List<Guard> guards = m.guardRows().stream().map(Mirror::guard).toList();
    return m.toBuilder()
        .spindle(-m.spindleX(), m.spindleY())
        .slots(slots(m))
        .ledges(swapped(m.ledges()))
        .gap(Side.LEFT, m.gap(Side.RIGHT))
        .gap(Side.RIGHT, m.gap(Side.LEFT))
        .load(OptionalLong.of(-m.loadX()), OptionalLong.of(m.loadY()))
        .turns(turns(m.turns()))
        .guardRows(guards)
        .build();
  }

  static Vise vise(Vise v) {
    List<VisePart> parts =
        v.parts().stream()
            .map(
                p ->
                    new VisePart(
                        p.name(),
                        p.when(),
                        p.uClosed(),
                        p.uOpen(),
                        p.v().negated(),
                        p.w(),
                        p.tolerance()))
            .toList();
    List<Mount> mounts =
        v.mounts().stream()
            .map(m -> new Mount(m.name(), m.own(), m.bolts().stream().map(Mirror::bolt).toList()))
            .toList();
    return v.toBuilder().turns(turns(v.turns())).mounts(mounts).parts(parts).build();
  }

  private static Bolt bolt(Bolt b) {
    Dimension v = b.v().isKnown() ? Dimension.of(-b.v().length()) : b.v();
    return new Bolt(b.u(), v, b.holeU(), b.holeV());
  }

  private static Guard guard(Guard g) {
    Box box = new Box(g.limits().x().negated(), g.limits().y(), g.limits().z());
    return new Guard(
        g.name(),
        g.kind(),
        g.carriedBy(),
        g.when(),
        g.side().map(Mirror::side),
        g.gap(),
        box,
        g.clearance(),
        g.tolerance());
  }

  private static Slots slots(Machine m) {
    Slots s = m.slots();
    if (s.direction() == Axis.X) {
      return s;
    }
    // Slots along y are measured from the left edge: measured from the right one, they come in the
    // other
    // order.
    List<Long> positions = new ArrayList<>();
    s.positions().forEach(at -> positions.add(m.tableLength() - at));
    Collections.reverse(positions);
    OptionalLong first = s.first();
    if (first.isPresent() && (s.count() == 1 || s.pitch().isKnown())) {
      long toLast = s.count() == 1 ? 0 : (s.count() - 1) * s.pitch().length();
      first = OptionalLong.of(m.tableLength() - first.getAsLong() - toLast);
    }
    return new Slots(s.direction(), s.count(), s.width(), s.pitch(), first, positions, s.length());
  }

  private static <T> Sides<T> swapped(Sides<T> sides) {
    return new Sides<>(sides.front(), sides.rear(), sides.right(), sides.left());
  }

  private static Side side(Side side) {
    return switch (side) {
      case LEFT -> Side.RIGHT;
      case RIGHT -> Side.LEFT;
      default -> side;
    };
  }

  private static Set<Orientation> turns(Set<Orientation> turns) {
    Set<Orientation> swapped = EnumSet.noneOf(Orientation.class);
    for (Orientation turn : turns) {
      swapped.add(
          turn == Orientation.LEFT
              ? Orientation.RIGHT
              : turn == Orientation.RIGHT ? Orientation.LEFT : turn);
    }
    return swapped;
  }
}
