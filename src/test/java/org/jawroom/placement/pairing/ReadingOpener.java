package org.jawroom.placement.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;

/** One reading of a pairing that a test may open: how to read it and how to replace it. */
record ReadingOpener(
    String name,
    Function<Standing, Optional<Dimension>> get,
    BiFunction<Standing, Dimension, Standing> with) {

  /** A machine and the vise on it. */
  record Standing(Machine machine, Vise vise) {}

  /**
   * Whether it may have that value: a nose cannot stand lower at its highest than at its lowest.
   */
  boolean isPossible(Standing standing, long value) {
    Dimension min = standing.machine.noseMin();
    Dimension max = standing.machine.noseMax();
    return switch (name) {
      case "nose_min" -> !max.isKnown() || value <= max.length();
      case "nose_max" -> !min.isKnown() || min.length() <= value;
      default -> true;
    };
  }

  /** Every kind of reading that may be a range. */
  static List<ReadingOpener> all() {
    List<ReadingOpener> all = new ArrayList<>();
    for (Side side : Side.values()) {
      all.add(
          machine(
              side + " gap",
              machine -> machine.gap(side),
              (machine, value) -> machine.withGap(side, value)));
    }
    all.add(
        machine(
            "nose_min",
            Machine::noseMin,
            (machine, value) -> machine.toBuilder().nose(value, machine.noseMax()).build()));
    all.add(
        machine(
            "nose_max",
            Machine::noseMax,
            (machine, value) -> machine.toBuilder().nose(machine.noseMin(), value).build()));
    all.add(
        machine(
            "slot_pitch",
            machine -> machine.slots().needsPitch() ? machine.slots().pitch() : Dimension.NONE,
            (machine, value) -> machine.toBuilder().slots(pitched(machine, value)).build()));
    all.add(base("base_width", Base::width, (b, v) -> base(b, v, b.rearReach(), b.frontReach())));
    all.add(base("rear_reach", Base::rearReach, (b, v) -> base(b, b.width(), v, b.frontReach())));
    all.add(base("front_reach", Base::frontReach, (b, v) -> base(b, b.width(), b.rearReach(), v)));
    all.add(
        vise(
            "fixed_jaw",
            vise -> vise.jaws().fixedThickness(),
            (vise, v) ->
                vise.withJaws(vise.jaws().withThickness(v, vise.jaws().movingThickness()))));
    all.add(
        vise(
            "moving_jaw",
            vise -> vise.jaws().movingThickness(),
            (vise, v) ->
                vise.withJaws(vise.jaws().withThickness(vise.jaws().fixedThickness(), v))));
    all.add(
        screw(
            "rear_closed",
            screw -> screw.rear().closed(),
            (s, v) -> s.withRear(new Projection(v, s.rear().open()))));
    all.add(
        screw(
            "rear_open",
            screw -> screw.rear().open(),
            (s, v) -> s.withRear(new Projection(s.rear().closed(), v))));
    all.add(
        screw(
            "front_closed",
            screw -> screw.front().closed(),
            (s, v) -> s.withFront(new Projection(v, s.front().open()))));
    all.add(
        screw(
            "front_open",
            screw -> screw.front().open(),
            (s, v) -> s.withFront(new Projection(s.front().closed(), v))));
    all.add(
        screw(
            "screw_height",
            Screw::height,
            (s, v) -> new Screw(s.rear(), s.front(), v, s.diameter())));
    all.add(
        screw(
            "screw_diameter",
            Screw::diameter,
            (s, v) -> new Screw(s.rear(), s.front(), s.height(), v)));
    all.add(
        vise(
            "handle_radius",
            vise -> vise.handle().radius(),
            (vise, v) ->
                vise.withHandle(
                    new Handle(
                        v,
                        vise.handle().depth(),
                        vise.handle().onWhileCutting(),
                        vise.handle().fullSwing()))));
    all.add(
        vise(
            "handle_depth",
            vise -> vise.handle().radius().isNone() ? Dimension.NONE : vise.handle().depth(),
            (vise, v) ->
                vise.withHandle(
                    new Handle(
                        vise.handle().radius(),
                        v,
                        vise.handle().onWhileCutting(),
                        vise.handle().fullSwing()))));
    all.add(bolt("u", Bolt::u, (b, v) -> new Bolt(v, b.v(), b.holeU(), b.holeV())));
    all.add(bolt("v", Bolt::v, (b, v) -> new Bolt(b.u(), v, b.holeU(), b.holeV())));
    all.add(bolt("hole_u", Bolt::holeU, (b, v) -> new Bolt(b.u(), b.v(), v, b.holeV())));
    all.add(bolt("hole_v", Bolt::holeV, (b, v) -> new Bolt(b.u(), b.v(), b.holeU(), v)));
    return all;
  }

  private static ReadingOpener machine(
      String name, Function<Machine, Dimension> get, BiFunction<Machine, Dimension, Machine> with) {
    return new ReadingOpener(
        name,
        standing -> Optional.of(get.apply(standing.machine)),
        (standing, value) -> new Standing(with.apply(standing.machine, value), standing.vise));
  }

  private static ReadingOpener vise(
      String name, Function<Vise, Dimension> get, BiFunction<Vise, Dimension, Vise> with) {
    return new ReadingOpener(
        name,
        standing ->
            standing.vise.simple() ? Optional.of(get.apply(standing.vise)) : Optional.empty(),
        (standing, value) -> new Standing(standing.machine, with.apply(standing.vise, value)));
  }

  private static ReadingOpener base(
      String name, Function<Base, Dimension> get, BiFunction<Base, Dimension, Base> with) {
    return vise(
        name,
        vise -> get.apply(vise.base()),
        (vise, value) -> vise.withBase(with.apply(vise.base(), value)));
  }

  private static ReadingOpener screw(
      String name, Function<Screw, Dimension> get, BiFunction<Screw, Dimension, Screw> with) {
    return vise(
        name,
        vise -> get.apply(vise.screw()),
        (vise, value) -> vise.withScrew(with.apply(vise.screw(), value)));
  }

  /** The last bolt of the first mount. */
  private static ReadingOpener bolt(
      String name, Function<Bolt, Dimension> get, BiFunction<Bolt, Dimension, Bolt> with) {
    return new ReadingOpener(
        "bolt " + name,
        standing -> standing.vise.mounts().stream().findFirst().map(m -> get.apply(last(m))),
        (standing, value) -> {
          List<Mount> mounts = new ArrayList<>(standing.vise.mounts());
          Mount first = mounts.get(0);
          List<Bolt> bolts = new ArrayList<>(first.bolts());
          bolts.set(bolts.size() - 1, with.apply(last(first), value));
          mounts.set(0, new Mount(first.name(), first.own(), bolts));
          return new Standing(standing.machine, standing.vise.toBuilder().mounts(mounts).build());
        });
  }

  private static Bolt last(Mount mount) {
    return mount.bolts().get(mount.bolts().size() - 1);
  }

  private static Base base(Base base, Dimension width, Dimension rear, Dimension front) {
    return new Base(base.bedHeight(), width, rear, front);
  }

  private static Slots pitched(Machine machine, Dimension pitch) {
    Slots slots = machine.slots();
    return new Slots(
        slots.direction(),
        slots.count(),
        slots.width(),
        pitch,
        slots.first(),
        slots.positions(),
        slots.length());
  }
}
