package org.jawroom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.Guards;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.row.Note;
import org.junit.jupiter.api.Test;

/** The example shop, as it must come out of its tables. */
class ExampleShopTest {
  private static final long SIXTEENTH = Length.INCH / 16;

  @Test
  void machine_inInches_isExact() throws Exception {
    Machine exact = shop().machines().get(1);
    assertEquals("exact", exact.name());
    assertEquals(new Axes(true, true, false), exact.tableMoves());
    assertEquals(30 * Length.INCH, exact.tableLength());
    assertEquals(164 * SIXTEENTH, exact.tableWidth());
    assertEquals(
        new Slots(
            Axis.X,
            3,
            inches(10),
            inches(52),
            OptionalLong.empty(),
            List.of(),
            OptionalLong.empty()),
        exact.slots());
    assertEquals(
        List.of(inches(44), inches(8), Dimension.NONE, Dimension.NONE),
        Arrays.stream(Side.values()).map(exact::gap).toList());
    assertEquals(inches(64), exact.noseMin());
    assertEquals(6 * Length.INCH, exact.loadY());
    assertEquals(0, exact.loadX());
    assertEquals(Set.of(Orientation.values()), exact.turns());
    assertEquals(SIXTEENTH, shop().machines().get(2).provenance().tolerance());
    assertEquals(Dimension.BLANK, shop().machines().get(5).gap(Side.REAR));
  }

  @Test
  void guards_boxHeadAndSill_comeOut() throws Exception {
    List<Guard> guards = shop().machines().get(0).guardRows();
    long end = Length.ENDLESS;
    assertEquals(
        List.of(
            new Guard(
                "hose arm",
                "other",
                Axes.NONE,
                When.CUTTING,
                Optional.empty(),
                Dimension.NONE,
                new Box(
                    mm(180, 240),
                    new Interval(60 * Length.MM, end),
                    new Interval(90 * Length.MM, end)),
                OptionalLong.of(10 * Length.MM),
                OptionalLong.empty()),
            Guards.box(
                "head",
                "head",
                new Axes(false, false, true),
                When.ALWAYS,
                new Box(mm(-90, 90), new Interval(-110 * Length.MM, end), new Interval(0, end))),
            Guards.beside(
                "sill",
                "sill",
                Axes.NONE,
                When.ALWAYS,
                Side.FRONT,
                Dimension.of(40 * Length.MM),
                new Box(Interval.ALL, Interval.ALL, new Interval(-end, -25 * Length.MM)))),
        guards);
    assertTrue(shop().machines().get(1).guardRows().isEmpty());
  }

  @Test
  void vise_inInches_isExact() throws Exception {
    Vise vise = shop().vises().get(3);
    assertEquals("six inch full swing", vise.name());
    assertTrue(vise.handle().fullSwing());
    assertEquals(inches(72), vise.handle().radius());
    assertEquals(Set.of(Orientation.FRONT), vise.turns());
    assertEquals(46 * SIXTEENTH + 28 * SIXTEENTH, vise.top());
    assertEquals(Dimension.NONE, vise.screw().rear().open());
    assertEquals(0, new BigDecimal("34.01942775").compareTo(vise.mass().orElseThrow()));
    Dimension hole = Dimension.of(18_034_000 * Length.NANOMETRE);
    assertEquals(
        List.of(
            new Mount(
                Mount.BASE_BOLTS,
                true,
                List.of(
                    new Bolt(inches(32), inches(-60), inches(50), hole),
                    new Bolt(inches(32), inches(60), inches(50), hole)))),
        vise.mounts());
    assertEquals(OptionalLong.of(14 * SIXTEENTH), vise.boltGrip());
  }

  @Test
  void settings_givenAndDefaulted_areListed() throws Exception {
    Reading reading = reading();
    assertEquals(4 * SIXTEENTH, shop().settings().clearance());
    assertEquals(4 * SIXTEENTH, shop().settings().spacing());
    assertEquals(new SettingUsed("unit", "mm", "default"), reading.settings().get(0));
    assertEquals(
        new SettingUsed("clearance", "6.35 mm", "settings.csv row 2"), reading.settings().get(3));
    assertEquals(
        List.of(
            "unit",
            "show",
            "decimal",
            "clearance",
            "hand_room",
            "spacing",
            "clamp_room",
            "tap_room",
            "smaller_threads",
            "shortest_tool",
            "jaw_play",
            "load_room",
            "comfort",
            "least_opening",
            "max_overhang"),
        reading.settings().stream().map(SettingUsed::name).toList());
  }

  @Test
  void filesAndOthers_areNamed() throws Exception {
    Reading reading = reading();
    assertEquals(
        List.of("guards.csv", "machines.csv", "settings.csv", "vises.csv"),
        reading.files().stream().map(org.jawroom.tables.source.grid.FileRead::name).toList());
    assertEquals(
        List.of(
            "README.md: left alone: none of the tables",
            "expected.csv: left alone: none of the tables"),
        reading.notes(Note.Kind.LEFT_ALONE).stream().map(Note::toString).toList());
  }

  private static Reading reading() throws Exception {
    Path folder = Path.of(ExampleShopTest.class.getResource("/org/jawroom/golden/example").toURI());
    return ShopReader.read(folder, Map.of());
  }

  private static Shop shop() throws Exception {
    Reading reading = reading();
    assertEquals(List.of(), reading.faults());
    return reading.shop().orElseThrow();
  }

  private static Dimension inches(long sixteenths) {
    return Dimension.of(sixteenths * SIXTEENTH);
  }

  private static Interval mm(long lo, long hi) {
    return new Interval(lo * Length.MM, hi * Length.MM);
  }
}
