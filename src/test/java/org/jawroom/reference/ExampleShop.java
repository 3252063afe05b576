package org.jawroom.reference;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Axes;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Side;
import org.jawroom.shop.Vise;
import org.jawroom.shop.When;

/** The small shop worked out by hand, with every verdict in it; built in code, without a reader. */
final class ExampleShop {
  private ExampleShop() {}

  static Shop shop() {
    Settings d = Settings.DEFAULTS;
    Settings settings = Settings.builder().clearance(in(0.25)).build();
    return new Shop(settings, machines(), vises(), List.of());
  }

  /** Millimetres, a whole number of nanometres. */
  static long mm(double millimetres) {
    return Math.round(millimetres * 1e6) * Length.NANOMETRE;
  }

  /** Inches, a whole number of nanometres. */
  static long in(double inches) {
    return mm(inches * 25.4);
  }

  private static Dimension dimMm(double value) {
    return Dimension.of(mm(value));
  }

  private static Dimension dimIn(double value) {
    return Dimension.of(in(value));
  }

  private static List<Machine> machines() {
    MachineDraft roomy = metric("roomy");
    roomy.rearGap = dimMm(50);
    roomy.guards.add(
        box(
            "hose arm",
            "other",
            Axes.NONE,
            When.CUTTING,
            mm(180),
            mm(240),
            mm(60),
            mm(90),
            mm(10)));
    roomy.guards.add(
        new Guard(
            "head",
            "head",
            new Axes(false, false, true),
            When.ALWAYS,
            Optional.empty(),
            Dimension.NONE,
            new Box(
                new Interval(mm(-90), mm(90)),
                new Interval(mm(-110), Length.ENDLESS),
                new Interval(0, Length.ENDLESS)),
            OptionalLong.empty(),
            OptionalLong.empty()));
    roomy.guards.add(
        new Guard(
            "sill",
            "sill",
            Axes.NONE,
            When.ALWAYS,
            Optional.of(Side.FRONT),
            dimMm(40),
            new Box(Interval.ALL, Interval.ALL, new Interval(-Length.ENDLESS, mm(-25))),
            OptionalLong.empty(),
            OptionalLong.empty()));
    MachineDraft notMeasured = metric("not-measured");
    notMeasured.rearGap = Dimension.BLANK;
    return List.of(
        roomy.build(),
        inch("exact", 2.75, 0),
        inch("exact-taped", 2.75, in(0.0625)),
        inch("tight", 2, 0),
        inch("tighter", 1.25, 0),
        notMeasured.build());
  }

  private static Guard box(
      String name,
      String kind,
      Axes carriedBy,
      When when,
      long x0,
      long x1,
      long y0,
      long z0,
      long clearance) {
    return new Guard(
        name,
        kind,
        carriedBy,
        when,
        Optional.empty(),
        Dimension.NONE,
        new Box(
            new Interval(x0, x1),
            new Interval(y0, Length.ENDLESS),
            new Interval(z0, Length.ENDLESS)),
        OptionalLong.of(clearance),
        OptionalLong.empty());
  }

  private static MachineDraft metric(String name) {
    MachineDraft m = new MachineDraft();
    m.name = name;
    m.tableLength = mm(600);
    m.tableWidth = mm(300);
    m.travelX = mm(400);
    m.travelY = mm(300);
    m.slotWidth = dimMm(14);
    m.slotPitch = dimMm(100);
    m.frontGap = dimMm(80);
    m.noseMin = dimMm(100);
    m.noseMax = dimMm(500);
    m.maxLoad = Optional.of(BigDecimal.valueOf(300));
    return m;
  }

  private static Machine inch(String name, double frontGap, long tolerance) {
    MachineDraft m = new MachineDraft();
    m.name = name;
    m.tableLength = in(30);
    m.tableWidth = in(10.25);
    m.travelX = in(24);
    m.travelY = in(12);
    m.slotWidth = dimIn(0.625);
    m.slotPitch = dimIn(3.25);
    m.frontGap = dimIn(frontGap);
    m.rearGap = dimIn(0.5);
    m.noseMin = dimIn(4);
    m.noseMax = dimIn(18);
    m.tolerance = tolerance;
    return m.build();
  }

  private static List<Vise> vises() {
    ViseDraft plain = plain("plain");
    plain.rearClosed = dimMm(38);
    plain.turns = EnumSet.of(Orientation.FRONT);
    plain.boltSpacing = dimMm(180);
    plain.holeU = dimMm(52);
    ViseDraft sixInch = sixInch("six inch");
    sixInch.turns = EnumSet.of(Orientation.FRONT);
    ViseDraft withHandle = sixInch("six inch handle");
    withHandle.handleRadius = dimIn(4.5);
    withHandle.handleDepth = dimIn(1.25);
    ViseDraft fullSwing = sixInch("six inch full swing");
    fullSwing.handleRadius = dimIn(4.5);
    fullSwing.handleDepth = dimIn(1.25);
    fullSwing.fullSwing = true;
    fullSwing.turns = EnumSet.of(Orientation.FRONT);
    ViseDraft wide = plain("wide bolts");
    wide.turns = EnumSet.of(Orientation.LEFT, Orientation.RIGHT);
    wide.boltSpacing = dimMm(190);
    wide.holeU = dimMm(18);
    return List.of(
        plain.build(),
        sixInch.build(),
        withHandle.build(),
        fullSwing.build(),
        centred(),
        wide.build());
  }

  private static ViseDraft plain(String name) {
    ViseDraft v = new ViseDraft();
    v.name = name;
    v.jawWidth = mm(150);
    v.jawHeight = mm(40);
    v.bedHeight = mm(60);
    v.openingMax = mm(150);
    v.baseWidth = dimMm(170);
    v.rearReach = dimMm(60);
    v.frontReach = dimMm(200);
    v.fixedJaw = dimMm(25);
    v.movingJaw = dimMm(60);
    v.frontClosed = dimMm(20);
    v.frontOpen = dimMm(20);
    v.screwHeight = dimMm(40);
    v.screwDiameter = dimMm(24);
    v.boltU = dimMm(70);
    v.holeV = dimMm(18);
    v.boltGrip = OptionalLong.of(mm(20));
    v.mass = Optional.of(BigDecimal.valueOf(32));
    return v;
  }

  private static ViseDraft sixInch(String name) {
    ViseDraft v = new ViseDraft();
    v.name = name;
    v.jawWidth = in(6);
    v.jawHeight = in(1.75);
    v.bedHeight = in(2.875);
    v.openingMax = in(6);
    v.baseWidth = dimIn(7.5);
    v.rearReach = dimIn(2.25);
    v.frontReach = dimIn(8.5);
    v.fixedJaw = dimIn(1);
    v.movingJaw = dimIn(3);
    v.rearClosed = dimIn(1.5);
    v.frontClosed = dimIn(0.75);
    v.frontOpen = dimIn(0.75);
    v.screwHeight = dimIn(1.75);
    v.screwDiameter = dimIn(1);
    v.boltSpacing = dimIn(7.5);
    v.boltU = dimIn(2);
    v.holeU = dimIn(3.125);
    v.holeV = dimIn(0.71);
    v.boltGrip = OptionalLong.of(in(0.875));
    v.mass = Optional.of(new BigDecimal("34.019427"));
    return v;
  }

  private static Vise centred() {
    ViseDraft v = new ViseDraft();
    v.name = "centred";
    v.both = true;
    v.jawWidth = mm(100);
    v.jawHeight = mm(35);
    v.bedHeight = mm(50);
    v.openingMax = mm(120);
    v.baseWidth = dimMm(120);
    v.rearReach = dimMm(110);
    v.frontReach = dimMm(110);
    v.movingJaw = dimMm(45);
    v.frontClosed = dimMm(12);
    v.frontOpen = dimMm(12);
    v.screwHeight = dimMm(30);
    v.screwDiameter = dimMm(20);
    v.boltSpacing = dimMm(140);
    v.boltU = dimMm(0);
    v.holeU = dimMm(44);
    v.holeV = dimMm(14);
    v.boltGrip = OptionalLong.of(mm(18));
    v.mass = Optional.of(BigDecimal.valueOf(18));
    return v.build();
  }
}
