package org.jawroom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.TestShop;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.row.Origins;
import org.jawroom.tables.schema.TableSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What blanks come to, and what is reported of them. */
class DefaultsTest {
  private static final long MM = Length.MM;

  @TempDir Path folder;

  @Test
  void machine_blanks_haveTheDefaultsOfThePage() throws Exception {
    Machine mill = shop(TestShop.sound(folder)).machines().get(0);
    assertFalse(mill.candidate());
    assertEquals(0, mill.spindleX());
    assertEquals(0, mill.spindleY());
    assertEquals(Axis.X, mill.slots().direction());
    assertEquals(OptionalLong.empty(), mill.slots().first());
    assertEquals(OptionalLong.empty(), mill.slots().length());
    assertEquals(new Sides<>(0L, 0L, 0L, 0L), mill.ledges());
    assertEquals(Dimension.BLANK, mill.noseMin());
    assertEquals(Dimension.BLANK, mill.noseMax());
    assertEquals(Optional.empty(), mill.maxLoad());
    assertEquals(0, mill.loadX());
    assertEquals(150 * MM, mill.loadY());
    assertEquals(EnumSet.allOf(Orientation.class), mill.turns());
    assertEquals(List.of(), mill.lookedFor());
    assertTrue(mill.provenance().assumedExact());
    assertEquals(0, mill.provenance().tolerance());
    assertEquals(Optional.empty(), mill.price());
  }

  @Test
  void vise_blanks_haveTheDefaultsOfThePageOrStayBlank() throws Exception {
    Vise vise = shop(TestShop.sound(folder)).vises().get(0);
    Dimension blank = Dimension.BLANK;
    assertEquals(1, vise.quantity());
    assertTrue(vise.simple());
    assertFalse(vise.jaws().both());
    assertEquals(150 * MM, vise.jaws().platesWidth());
    assertEquals(40 * MM, vise.jaws().platesHeight());
    assertEquals(blank, vise.jaws().fixedThickness());
    assertEquals(new Interval(0, 150 * MM), vise.opening());
    assertEquals(blank, vise.base().width());
    assertEquals(blank, vise.base().rearReach());
    assertEquals(blank, vise.base().frontReach());
    assertEquals(blank, vise.screw().rear().closed());
    assertEquals(blank, vise.screw().height());
    assertEquals(blank, vise.handle().radius());
    assertFalse(vise.handle().onWhileCutting());
    assertFalse(vise.handle().fullSwing());
    assertEquals(
        List.of(
            new Mount(
                Mount.BASE_BOLTS,
                true,
                List.of(
                    new Bolt(blank, blank, blank, blank), new Bolt(blank, blank, blank, blank)))),
        vise.mounts());
    assertEquals(OptionalLong.empty(), vise.boltGrip());
    assertFalse(vise.strapFlange());
    assertEquals(Optional.empty(), vise.mass());
  }

  @Test
  void defaults_thatBearOnClearance_areNoted() throws Exception {
    assertEquals(
        List.of(
            "machines.csv row 2: machine mill: slot_first blank, so its slots taken as centred on the table",
            "machines.csv row 2: machine mill: neither tolerance nor source, so tolerance taken as 0",
            "machines.csv row 2: machine mill: load_x blank, so loaded with the spindle at spindle_x",
            "machines.csv row 2: machine mill: load_y blank, so loaded with the table nearest the operator",
            "vises.csv row 2: vise vise: plates blank, so no jaw plates larger than the jaws",
            "vises.csv row 2: vise vise: neither tolerance nor source, so tolerance taken as 0",
            "vises.csv row 2: vise vise: bolt_grip blank, so its bolts taken as bed_height high"),
        TestShop.sound(folder).notes(Note.Kind.DEFAULT));
  }

  @ParameterizedTest
  @CsvSource({
    "drawing, '', 1000000",
    "caliper, '', 1000000",
    "Rule, '', 2000000",
    "tape, '', 3000000",
    "brochure, '', 10000000",
    "brochure, 0.25, 500000",
    "'', 1/16 in, 3175000"
  })
  void tolerance_fromSourceUnlessGiven(String source, String tolerance, long halfNanometres)
      throws Exception {
    Machine mill =
        shop(TestShop.in(folder)
                .machine("mill", "source", source, "tolerance", tolerance)
                .vise("v"))
            .machines()
            .get(0);
    assertEquals(halfNanometres, mill.provenance().tolerance());
    assertFalse(mill.provenance().assumedExact());
  }

  @Test
  void loadY_default_followsTheSpindle() throws Exception {
    Machine mill =
        shop(TestShop.in(folder).machine("mill", "spindle_y", "-20", "spindle_x", "7").vise("v"))
            .machines()
            .get(0);
    assertEquals(7 * MM, mill.loadX());
    assertEquals(130 * MM, mill.loadY());
  }

  @Test
  void loadPosition_atTheVeryEndOfTheReach_isTaken() throws Exception {
    Machine mill =
        shop(TestShop.in(folder).machine("mill", "load_x", "-200", "load_y", "-150").vise("v"))
            .machines()
            .get(0);
    assertEquals(-200 * MM, mill.loadX());
    assertEquals(-150 * MM, mill.loadY());
  }

  @Test
  void slotPositions_standInsteadOfCount() throws Exception {
    Machine mill =
        shop(TestShop.in(folder)
                .machine(
                    "mill",
                    "unit",
                    "in",
                    "slot_count",
                    "",
                    "slot_pitch",
                    "",
                    "slot_positions",
                    "45 mm; 5; 8 1/2\"",
                    "slot_direction",
                    "Y")
                .vise("v"))
            .machines()
            .get(0);
    assertEquals(List.of(45 * MM, 127 * MM, 215_900_000L * 2), mill.slots().positions());
    assertEquals(3, mill.slots().count());
    assertEquals(Axis.Y, mill.slots().direction());
  }

  @Test
  void slotCount_zero_isAPlainTable() throws Exception {
    Machine mill =
        shop(TestShop.in(folder).machine("mill", "slot_count", "0", "slot_pitch", "").vise("v"))
            .machines()
            .get(0);
    assertEquals(0, mill.slots().count());
  }

  @ParameterizedTest
  @CsvSource({"xy, true, true, false", "ZX, true, false, true", "None, false, false, false"})
  void tableMoves_anyOrderAndCase(String text, boolean x, boolean y, boolean z) throws Exception {
    Machine mill =
        shop(TestShop.in(folder).machine("mill", "table_moves", text).vise("v")).machines().get(0);
    assertEquals(new Axes(x, y, z), mill.tableMoves());
  }

  @ParameterizedTest
  @CsvSource({
    "'', false, false, false",
    "Frame, false, false, false",
    "saddle, false, true, false",
    "head, false, false, true",
    "table, true, true, false",
    "ZyX, true, true, true",
    "z, false, false, true"
  })
  void carriedBy_isResolvedToAxes(String text, boolean x, boolean y, boolean z) throws Exception {
    Guard guard =
        shop(TestShop.sound(folder).guard("mill", "arm", "carried_by", text, "z_min", "0"))
            .machines()
            .get(0)
            .guardRows()
            .get(0);
    assertEquals(new Axes(x, y, z), guard.carriedBy());
  }

  @Test
  void guard_gaps_blankNoneAndBelowZero() throws Exception {
    List<Guard> guards =
        shop(TestShop.sound(folder)
                .guard("mill", "not taped", "side", "rear")
                .guard("MILL", "not there", "side", "left", "gap", "NONE")
                .guard("mill", "under", "side", "right", "gap", "-5", "y_max", "3"))
            .machines()
            .get(0)
            .guardRows();
    assertEquals(List.of("not taped", "under"), guards.stream().map(Guard::name).toList());
    assertEquals(Dimension.BLANK, guards.get(0).gap());
    assertEquals(Dimension.of(-5 * MM), guards.get(1).gap());
    assertEquals(
        new Box(Interval.ALL, new Interval(-Length.ENDLESS, 3 * MM), Interval.ALL),
        guards.get(1).limits());
  }

  @Test
  void reach_isWorkedOutFromTheLengthOverall() throws Exception {
    List<Vise> vises =
        shop(TestShop.in(folder)
                .machine("mill")
                .vise("rear given", "rear_reach", "60", "base_length", "260")
                .vise("front given", "front_reach", "200", "base_length", "260")
                .vise("neither", "base_length", "260")
                .vise("all", "rear_reach", "60", "front_reach", "200", "base_length", "260"))
            .vises();
    for (int i : new int[] {0, 1, 3}) {
      assertEquals(Dimension.of(60 * MM), vises.get(i).base().rearReach());
      assertEquals(Dimension.of(200 * MM), vises.get(i).base().frontReach());
    }
    assertEquals(Dimension.BLANK, vises.get(2).base().rearReach());
    assertEquals(Dimension.BLANK, vises.get(2).base().frontReach());
  }

  @Test
  void mounts_ownPairFirst_thenRowsByName() throws Exception {
    TestShop shop =
        TestShop.in(folder)
            .machine("mill")
            .vise(
                "pair",
                "bolt_spacing",
                "101",
                "bolt_u",
                "-7",
                "bolt_hole_u",
                "20",
                "bolt_hole_v",
                "18")
            .vise("unbolted", "bolt_spacing", "none")
            .mount("pair", "wide", "u", "1", "v", "2", "hole_u", "20", "hole_v", "")
            .mount("pair", "narrow", "u", "3", "v", "4")
            .mount("pair", "wide", "u", "5", "v", "6");
    List<Mount> mounts = shop(shop).vises().get(0).mounts();
    assertEquals(
        List.of(
            new Mount(
                Mount.BASE_BOLTS, true, List.of(bolt(-7, -50.5, 20, 18), bolt(-7, 50.5, 20, 18))),
            new Mount(
                "wide",
                false,
                List.of(
                    new Bolt(mm(1), mm(2), mm(20), Dimension.BLANK),
                    new Bolt(mm(5), mm(6), Dimension.BLANK, Dimension.BLANK))),
            new Mount(
                "narrow",
                false,
                List.of(new Bolt(mm(3), mm(4), Dimension.BLANK, Dimension.BLANK)))),
        mounts);
    assertEquals(List.of(), shop(shop).vises().get(1).mounts());
  }

  @Test
  void parts_openLimitsBlank_areAsClosed() throws Exception {
    List<VisePart> parts =
        shop(TestShop.in(folder)
                .machine("mill")
                .vise("vise", "shape", "parts")
                .part("vise", "HANDLE", "when", "loading", "tolerance", "1")
                .part("vise", "nut", "u_max_open", "30"))
            .vises()
            .get(0)
            .parts();
    assertEquals("handle", parts.get(0).name());
    assertEquals(parts.get(0).uClosed(), parts.get(0).uOpen());
    assertEquals(new Interval(0, 30 * MM), parts.get(1).uOpen());
    assertEquals(OptionalLong.of(MM), parts.get(0).tolerance());
  }

  @Test
  void job_isRead() throws Exception {
    List<Job> jobs =
        shop(TestShop.sound(folder)
                .machine("other")
                .job("plain")
                .job(
                    "full",
                    "grip",
                    "5",
                    "mass",
                    "2 kg",
                    "tool_length",
                    "4 in",
                    "jaws_along",
                    "Y",
                    "machines",
                    "Other; mill",
                    "quantity",
                    "40000"))
            .jobs();
    assertEquals(OptionalLong.empty(), jobs.get(0).grip());
    assertEquals(Dimension.BLANK, jobs.get(0).toolLength());
    assertEquals(List.of(), jobs.get(0).machines());
    assertEquals(1, jobs.get(0).quantity());
    assertEquals(Optional.of(Axis.Y), jobs.get(1).jawsAlong());
    assertEquals(List.of("other", "mill"), jobs.get(1).machines());
    assertEquals(Dimension.of(4 * Length.INCH), jobs.get(1).toolLength());
  }

  @Test
  void settings_none_areTheDefaultsOfTheShop() throws Exception {
    assertEquals(Settings.DEFAULTS, shop(TestShop.sound(folder)).settings());
  }

  @Test
  void settings_optionWins_andSpacingFollowsClearance() throws Exception {
    TestShop shop =
        TestShop.sound(folder)
            .setting("unit", "in")
            .setting("clearance", "1/4")
            .setting("Shortest Tool", "2")
            .setting("max_overhang", "")
            .option("clearance", "1/2");
    Settings settings = shop(shop).settings();
    assertEquals(Length.INCH / 2, settings.clearance());
    assertEquals(Length.INCH / 2, settings.spacing());
    assertEquals(OptionalLong.of(2 * Length.INCH), settings.shortestTool());
    assertEquals(OptionalLong.empty(), settings.maxOverhang());
    assertEquals(25 * MM, settings.handRoom());
    assertEquals(
        List.of(
            new SettingUsed("unit", "in", "settings.csv row 2"),
            new SettingUsed(
                "show",
                "that of the machine's row; for a whole shop that of most machines",
                "default"),
            new SettingUsed("decimal", "point", "default"),
            new SettingUsed("clearance", "12.7 mm", "option --clearance"),
            new SettingUsed("hand_room", "25 mm", "default"),
            new SettingUsed("spacing", "as clearance", "default")),
        shop.read().settings().subList(0, 6));
  }

  @Test
  void settings_decimalComma_holdsForEveryTable() throws Exception {
    Machine mill =
        shop(TestShop.in(folder)
                .machine("mill", "rear_gap", "1,250", "max_load", "2,5 lb")
                .vise("vise")
                .setting("clearance", "6,5")
                .setting("decimal", "Comma"))
            .machines()
            .get(0);
    assertEquals(Dimension.of(MM * 5 / 4), mill.gap(Side.REAR));
  }

  @Test
  void bareNumbers_ofSideRows_takeTheSettingsUnitAndAreNoted() throws Exception {
    TestShop shop =
        TestShop.in(folder)
            .machine("mill", "unit", "in", "travel_x", "10 mm")
            .vise("vise", "unit", "cm")
            .guard("mill", "bare", "x_min", "1", "y_min", "1 in", "clearance", "2", "z_min", "0")
            .guard("mill", "own", "x_min", "1", "unit", "in")
            .part("vise", "box")
            .mount("vise", "wide", "u", "0", "v", "0", "hole_u", "1 mm");
    assertEquals(MM, shop(shop).machines().get(0).guardRows().get(0).limits().x().lo());
    assertEquals(Length.INCH, shop(shop).machines().get(0).guardRows().get(1).limits().x().lo());
    assertEquals(
        List.of(
            "guards.csv row 2: bare numbers (x_min, clearance) taken as millimetres, but mill is in"
                + " inches",
            "vise_parts.csv row 2: bare numbers (u_max_closed, v_min, v_max, w_max) taken as millimetres, but"
                + " vise is in centimetres"),
        shop.notes(Note.Kind.BARE_NUMBER));
  }

  @Test
  void workedRows_andWhatRefersToThem_areSkipped() throws Exception {
    TestShop shop =
        TestShop.sound(folder)
            .machine("e.g. mill", "table_length", "rubbish")
            .vise("E.g. vise", "mass", "rubbish")
            .guard("e.g. mill", "sill")
            .guard("mill", "e.g. arm")
            .part("e.g. vise", "box")
            .mount("e.g. vise", "wide")
            .job("e.g. job")
            .job("job", "machines", "mill; e.g. mill");
    assertEquals(1, shop(shop).machines().size());
    assertEquals(
        List.of(
            "machines.csv row 3: skipped: a worked example",
            "guards.csv row 2: skipped: a worked example",
            "guards.csv row 3: skipped: a worked example",
            "vises.csv row 3: skipped: a worked example",
            "vise_parts.csv row 2: skipped: a worked example",
            "mounts.csv row 2: skipped: a worked example",
            "jobs.csv row 2: skipped: a worked example",
            "jobs.csv row 3: skipped: a worked example"),
        shop.notes(Note.Kind.WORKED_ROW));
  }

  @Test
  void origins_nameTheRowOfEverything() throws Exception {
    Origins origins =
        TestShop.sound(folder)
            .guard("mill", "arm", "x_min", "0")
            .part("vise", "box")
            .mount("vise", "wide")
            .job("job")
            .read()
            .origins();
    assertEquals(
        "machines.csv row 2", origins.find(TableSpec.MACHINES, "MILL").orElseThrow().toString());
    assertEquals(
        "guards.csv row 2", origins.find(TableSpec.GUARDS, "mill", "arm").orElseThrow().toString());
    assertEquals(
        "vise_parts.csv row 2", origins.find(TableSpec.VISE_PARTS, "vise", "box").get().toString());
    assertEquals(
        "mounts.csv row 2", origins.find(TableSpec.MOUNTS, "vise", "wide").get().toString());
    assertEquals("jobs.csv row 2", origins.find(TableSpec.JOBS, "job").orElseThrow().toString());
    assertEquals(Optional.empty(), origins.find(TableSpec.JOBS, "other"));
  }

  @Test
  void turns_anySeparator() throws Exception {
    Vise vise =
        shop(TestShop.in(folder).machine("mill").vise("v", "turns", "Front, rear;left"))
            .vises()
            .get(0);
    assertEquals(Set.of(Orientation.FRONT, Orientation.REAR, Orientation.LEFT), vise.turns());
  }

  private static Shop shop(TestShop tables) throws Exception {
    Reading reading = tables.read();
    assertEquals(List.of(), reading.faults());
    return reading.shop().orElseThrow();
  }

  private static Dimension mm(double length) {
    return Dimension.of((long) (length * MM));
  }

  private static Bolt bolt(double u, double v, double holeU, double holeV) {
    return new Bolt(mm(u), mm(v), mm(holeU), mm(holeV));
  }
}
