package org.jawroom.plausibility;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.Guards;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.When;

/** A mill about which nothing looks wrong, to be spoilt in one place; numbers in millimetres. */
final class SampleMachine {
  Axes moves = new Axes(true, true, false);
  double length = 900;
  double width = 400;
  double travelX = 600;
  Dimension slotWidth = mm(14);
  Dimension slotPitch = mm(100);
  int slotCount = 3;
  Sides<Long> ledges = new Sides<>(half(10), half(10), half(10), half(10));
  Sides<Dimension> gaps = new Sides<>(mm(150), mm(40), mm(100), mm(100));
  Dimension noseMin = mm(100);
  Dimension noseMax = mm(600);
  Set<Orientation> turns = EnumSet.allOf(Orientation.class);
  List<String> lookedFor = List.of("Head", "tool changer", " nozzle", "SILL", "column", "cover");
  Provenance provenance = new Provenance(half(1), false, "rule", "");
  List<Guard> guards = List.of();

  static Dimension mm(double mm) {
    return Dimension.of(half(mm));
  }

  static long half(double mm) {
    return Math.round(mm * Length.MM);
  }

  static Interval span(double lo, double hi) {
    return Interval.of(half(lo), half(hi));
  }

  static Interval upFrom(double lo) {
    return Interval.of(half(lo), Length.ENDLESS);
  }

  static Interval downFrom(double hi) {
    return Interval.of(-Length.ENDLESS, half(hi));
  }

  static Guard box(String name, String kind, Axes carriedBy, Interval x, Interval y, Interval z) {
    return Guards.box(name, kind, carriedBy, When.ALWAYS, new Box(x, y, z));
  }

  static Guard taped(String name, String kind, Side side, Dimension gap, Interval z) {
    return Guards.beside(
        name, kind, Axes.NONE, When.ALWAYS, side, gap, new Box(Interval.ALL, Interval.ALL, z));
  }

  Machine build() {
    return Machine.builder("mill")
        .tableMoves(moves)
        .table(half(length), half(width))
        .travel(half(travelX), half(400))
        .slots(
            new Slots(
                Axis.X,
                slotCount,
                slotWidth,
                slotPitch,
                OptionalLong.empty(),
                List.of(),
                OptionalLong.empty()))
        .ledges(ledges)
        .gaps(gaps)
        .nose(noseMin, noseMax)
        .load(OptionalLong.of(0), OptionalLong.of(half(200)))
        .turns(turns)
        .lookedFor(lookedFor)
        .provenance(provenance)
        .guardRows(guards)
        .build();
  }
}
