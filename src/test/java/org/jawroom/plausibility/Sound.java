package org.jawroom.plausibility;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;

/** A mill and a vise about which nothing looks wrong, to be spoilt in one place; millimetres. */
final class Sound {
  private Sound() {}

  static MachineDraft mill() {
    MachineDraft mill = new MachineDraft();
    mill.tableLength = half(900);
    mill.tableWidth = half(400);
    mill.travelX = half(600);
    mill.travelY = half(400);
    mill.slotWidth = mm(14);
    mill.slotPitch = mm(100);
    mill.ledges = new Sides<>(half(10), half(10), half(10), half(10));
    mill.frontGap = mm(150);
    mill.rearGap = mm(40);
    mill.leftGap = mm(100);
    mill.rightGap = mm(100);
    mill.noseMin = mm(100);
    mill.noseMax = mm(600);
    mill.loadX = OptionalLong.of(0);
    mill.loadY = OptionalLong.of(half(200));
    mill.lookedFor = List.of("Head", "tool changer", " nozzle", "SILL", "column", "cover");
    mill.tolerance = half(1);
    return mill;
  }

  static ViseDraft vise() {
    ViseDraft vise = new ViseDraft();
    vise.jawWidth = half(150);
    vise.jawHeight = half(40);
    vise.fixedJaw = mm(30);
    vise.movingJaw = mm(50);
    vise.openingMax = half(150);
    vise.bedHeight = half(60);
    vise.baseWidth = mm(200);
    vise.rearReach = mm(60);
    vise.frontReach = mm(240);
    vise.rearClosed = mm(40);
    vise.frontClosed = mm(20);
    vise.frontOpen = mm(20);
    vise.screwHeight = mm(45);
    vise.screwDiameter = mm(30);
    vise.handleRadius = mm(120);
    vise.handleDepth = mm(40);
    vise.turns = EnumSet.of(Orientation.FRONT);
    vise.boltSpacing = mm(170);
    vise.boltU = mm(90);
    vise.holeU = mm(20);
    vise.holeV = mm(20);
    vise.tolerance = half(1);
    return vise;
  }

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
}
