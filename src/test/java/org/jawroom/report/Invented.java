package org.jawroom.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.report.xlsx.RunFacts.FileRead;
import org.jawroom.report.xlsx.RunFacts.Setting;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;

/** Invented machines and vises for the tests of the reports, which read only little of them. */
public final class Invented {
  private Invented() {}

  public static final Provenance CALIPER = new Provenance(mm("0.5"), false, "caliper", "");
  public static final Provenance UNRECORDED = new Provenance(0, true, "", "");

  /** Half-nanometres; whole ones only. */
  public static long mm(String millimetres) {
    return new BigDecimal(millimetres).multiply(BigDecimal.valueOf(Length.MM)).longValueExact();
  }

  public static Dimension known(String millimetres) {
    return Dimension.of(mm(millimetres));
  }

  public static Machine machine(String name) {
    return machine(name, "", "900", "600", List.of("head"), CALIPER, List.of());
  }

  public static Machine machine(
      String name,
      String description,
      String length,
      String travel,
      List<String> lookedFor,
      Provenance provenance,
      List<Guard> guards) {
    return Machine.builder(name)
        .description(description)
        .table(mm(length), mm("350"))
        .travel(mm(travel), mm("400"))
        .slots(
            new Slots(
                Axis.X,
                3,
                known("14"),
                known("100"),
                OptionalLong.empty(),
                List.of(),
                OptionalLong.empty()))
        .gaps(new Sides<>(known("80"), known("50"), Dimension.NONE, Dimension.NONE))
        .nose(known("100"), known("500"))
        .maxLoad(Optional.of(new BigDecimal("300")))
        .load(OptionalLong.of(0), OptionalLong.of(0))
        .lookedFor(lookedFor)
        .provenance(provenance)
        .guardRows(guards)
        .build();
  }

  public static Vise vise(String name) {
    return vise(name, "150", "0", "150.07", Dimension.NONE, CALIPER);
  }

  public static Vise vise(
      String name, String jaw, String least, String most, Dimension handle, Provenance provenance) {
    Bolt bolt = new Bolt(known("70"), known("90"), known("52"), known("18"));
    return Vise.builder(name)
        .jaws(new Jaws(false, mm(jaw), mm("40"), mm(jaw), mm("40"), known("25"), known("60")))
        .opening(new Interval(mm(least), mm(most)))
        .base(new Base(mm("60"), known("170"), known("60"), known("200")))
        .screw(
            new Screw(
                new Projection(known("38"), Dimension.NONE),
                new Projection(known("20"), known("20")),
                known("40"),
                known("24")))
        .handle(new Handle(handle, handle, false, false))
        .mounts(List.of(new Mount(Mount.BASE_BOLTS, true, List.of(bolt, bolt))))
        .mass(Optional.of(new BigDecimal("32")))
        .provenance(provenance)
        .build();
  }

  public static RunFacts facts(PeopleUnit unit) {
    return new RunFacts(
        List.of(
            new FileRead("machines.csv", "sha256 " + "1f6c0d8ab3f0e9b7".repeat(4)),
            new FileRead("vises.csv", "sha256 " + "90a1b2c3d4e5f607".repeat(4))),
        List.of(
            new Setting("Required clearance", "6 mm"),
            new Setting("Hand room", "25 mm"),
            new Setting("Least opening that is of use", "25 mm"),
            new Setting(
                "Shortest tool",
                "not given: heads do not count while cutting; the least nose height is reported")),
        List.of("machines, row 3: spindle_x taken as 0", "machines, row 3: load_y taken as 200 mm"),
        List.of("vises, row 4: the screw is thicker than its height above the underside allows"),
        List.of("machines, row 6: rear_gap", "vises, row 9: screw_height"),
        unit,
        "jawroom 0.2.0");
  }
}
