package org.jawroom.plausibility;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/** The overhang of every pairing computed place by place, as lists; slow and simple. */
final class SimpleOverhangs {
  private SimpleOverhangs() {}

  /** The one warning about the vise on all of these machines together. */
  static Optional<Warning> of(List<Machine> machines, Vise vise) {
    if (!vise.simple()
        || !vise.base().rearReach().isKnown()
        || !vise.base().frontReach().isKnown()) {
      return Optional.empty();
    }
    List<Machine> reached =
        machines.stream().filter(machine -> least(machine, vise).isPresent()).toList();
    Optional<Machine> best =
        reached.stream().min(Comparator.comparingLong(machine -> least(machine, vise).getAsLong()));
    long length = vise.base().rearReach().length() + vise.base().frontReach().length();
    return best.filter(machine -> 4 * least(machine, vise).getAsLong() > length)
        .map(
            machine ->
                Warning.vise(
                    Seriousness.WRONG,
                    vise.name(),
                    "bolt_u",
                    "more than a quarter of its base hangs over the table's edge wherever it is"
                        + " bolted on any machine, at least "
                        + SpokenLength.of(least(machine, vise).getAsLong())
                        + ", on "
                        + machine.name()
                        + ". Check bolt_u, the reaches and the slots"));
  }

  private static OptionalLong least(Machine machine, Vise vise) {
    return machine.turns().stream()
        .filter(vise.turns()::contains)
        .flatMap(turn -> vise.mounts().stream().map(mount -> least(machine, vise, turn, mount)))
        .flatMapToLong(OptionalLong::stream)
        .min();
  }

  /**
   * The least overhang over an edge at the end of the base's length; empty: bolts reach no slots.
   */
  private static OptionalLong least(Machine machine, Vise vise, Orientation turn, Mount mount) {
    if (!isKnown(mount)) {
      return OptionalLong.empty();
    }
    Interval reaches =
        Interval.of(-vise.base().rearReach().length(), vise.base().frontReach().length());
    Interval base = turn.uSign() > 0 ? reaches : reaches.negated();
    Interval table = Interval.around(0, size(machine, turn.uAxis()) / 2);
    // Overhang falls and then rises along a run of places: it is least at an end, or in the middle.
    long middle = -(base.lo() + base.hi()) / 2;
    return places(machine, turn, mount).stream()
        .flatMapToLong(run -> LongStream.of(run.lo(), run.hi(), into(run, middle)))
        .map(place -> overhang(base.plus(place), table))
        .min();
  }

  private static long overhang(Interval base, Interval table) {
    return Math.max(0, Math.max(table.lo() - base.lo(), base.hi() - table.hi()));
  }

  /** Where the vise may stand along its own length with all bolts of the mount in slots. */
  private static List<Interval> places(Machine machine, Orientation turn, Mount mount) {
    Slots slots = machine.slots();
    List<Interval> across = List.of(Interval.ALL);
    List<Interval> along = List.of(Interval.ALL);
    long slotLength = slots.length().orElse(size(machine, slots.direction()));
    for (Bolt bolt : mount.bolts()) {
      across = meet(across, runs(slotLines(machine), turn, bolt, slots.direction().across(), 0));
      along = meet(along, runs(List.of(0L), turn, bolt, slots.direction(), slotLength / 2));
    }
    if (across.isEmpty() || along.isEmpty()) {
      return List.of();
    }
    return turn.uAxis() == slots.direction() ? along : across;
  }

  /**
   * For each line, where the vise's origin may stand so that the bolt comes within {@code reach} of
   * it.
   */
  private static List<Interval> runs(
      List<Long> lines, Orientation turn, Bolt bolt, Axis axis, long reach) {
    long u = bolt.u().length();
    long v = bolt.v().length();
    long offset = axis == Axis.X ? turn.x(u, v) : turn.y(u, v);
    Dimension hole = turn.uAxis() == axis ? bolt.holeU() : bolt.holeV();
    long play = hole.length() / 2;
    return lines.stream().map(line -> Interval.around(line - offset, play + reach)).toList();
  }

  /** Empty where a blank leaves the places of the slots open. */
  private static List<Long> slotLines(Machine machine) {
    Slots slots = machine.slots();
    long edge = -size(machine, slots.direction().across()) / 2;
    if (!slots.positions().isEmpty()) {
      return slots.positions().stream().map(position -> edge + position).toList();
    }
    if (slots.needsPitch() && !slots.pitch().isKnown()) {
      return List.of();
    }
    long pitch = slots.pitch().isKnown() ? slots.pitch().length() : 0;
    long centred = -(slots.count() - 1) * pitch / 2;
    long first = slots.first().isPresent() ? edge + slots.first().getAsLong() : centred;
    return LongStream.range(0, slots.count()).map(j -> first + j * pitch).boxed().toList();
  }

  private static List<Interval> meet(List<Interval> some, List<Interval> others) {
    List<Interval> common = new ArrayList<>();
    for (Interval one : some) {
      for (Interval other : others) {
        if (one.meets(other)) {
          common.add(Interval.of(Math.max(one.lo(), other.lo()), Math.min(one.hi(), other.hi())));
        }
      }
    }
    return common;
  }

  private static boolean isKnown(Mount mount) {
    return mount.bolts().stream()
        .allMatch(
            bolt ->
                bolt.u().isKnown()
                    && bolt.v().isKnown()
                    && bolt.holeU().isKnown()
                    && bolt.holeV().isKnown());
  }

  private static long size(Machine machine, Axis axis) {
    return axis == Axis.X ? machine.tableLength() : machine.tableWidth();
  }

  private static long into(Interval run, long place) {
    return Math.max(run.lo(), Math.min(run.hi(), place));
  }
}
