package org.jawroom.reference;

import java.util.List;
import java.util.function.LongFunction;
import java.util.function.UnaryOperator;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;

/**
 * A pairing whose blanks are filled with one value. What is reported in spite of a blank must hold
 * whatever the value is.
 */
record RefFilled(Machine machine, Vise vise) {
  private static final List<Long> VALUES =
      List.of(0L, 14 * Length.MM, 60 * Length.MM, 500 * Length.MM);

  static List<RefFilled> all(Machine machine, Vise vise) {
    LongFunction<RefFilled> filled = value -> filled(machine, vise, value);
    return VALUES.stream().map(filled::apply).toList();
  }

  private static RefFilled filled(Machine machine, Vise vise, long value) {
    UnaryOperator<Dimension> fill = old -> old.isBlank() ? Dimension.of(value) : old;
    return new RefFilled(machine(machine, value, fill), vise(vise, fill));
  }

  private static Machine machine(Machine machine, long value, UnaryOperator<Dimension> fill) {
    Slots slots = machine.slots();
    Dimension top = machine.noseMax();
    Dimension low = machine.noseMin();
    if (top.isBlank()) {
      top = Dimension.of(value + (low.isKnown() ? low.length() : 0));
    }
    if (low.isBlank()) {
      low = Dimension.of(Math.min(value, top.length()));
    }
    return machine
        .withEachGuard(guard -> guard.side().isPresent() ? taped(guard, fill) : guard)
        .toBuilder()
        .nose(low, top)
        .slots(
            new Slots(
                slots.direction(),
                slots.count(),
                fill.apply(slots.width()),
                fill.apply(slots.pitch()),
                slots.first(),
                slots.positions(),
                slots.length()))
        .build();
  }

  private static Guard taped(Guard guard, UnaryOperator<Dimension> fill) {
    return guard.withGap(fill.apply(guard.gap()));
  }

  private static Vise vise(Vise vise, UnaryOperator<Dimension> fill) {
    Base base = vise.base();
    Jaws jaws = vise.jaws();
    Screw screw = vise.screw();
    Handle handle = vise.handle();
    return vise.toBuilder()
        .base(
            new Base(
                base.bedHeight(),
                fill.apply(base.width()),
                fill.apply(base.rearReach()),
                fill.apply(base.frontReach())))
        .jaws(
            jaws.withThickness(
                fill.apply(jaws.fixedThickness()), fill.apply(jaws.movingThickness())))
        .screw(
            new Screw(
                projection(screw.rear(), fill),
                projection(screw.front(), fill),
                fill.apply(screw.height()),
                fill.apply(screw.diameter())))
        .handle(
            new Handle(
                fill.apply(handle.radius()),
                fill.apply(handle.depth()),
                handle.onWhileCutting(),
                handle.fullSwing()))
        .mounts(vise.mounts().stream().map(mount -> mount(mount, fill)).toList())
        .build();
  }

  private static Projection projection(Projection old, UnaryOperator<Dimension> fill) {
    return new Projection(fill.apply(old.closed()), fill.apply(old.open()));
  }

  private static Mount mount(Mount mount, UnaryOperator<Dimension> fill) {
    return new Mount(
        mount.name(),
        mount.own(),
        mount.bolts().stream()
            .map(
                bolt ->
                    new Bolt(
                        fill.apply(bolt.u()),
                        fill.apply(bolt.v()),
                        fill.apply(bolt.holeU()),
                        fill.apply(bolt.holeV())))
            .toList());
  }
}
