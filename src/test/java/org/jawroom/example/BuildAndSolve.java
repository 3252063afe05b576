package org.jawroom.example;

import static org.jawroom.geometry.Length.MM;

import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;

/** Builds a machine and a vise and solves them, with the core JAR alone. */
final class BuildAndSolve {
  public static void main(String[] args) {
    Machine machine =
        Machine.builder("mill")
            .table(700 * MM, 400 * MM)
            .travel(500 * MM, 300 * MM)
            .slots(Slots.centred(Axis.X, 3, mm(14), mm(100)))
            .gaps(new Sides<>(mm(90), mm(60), mm(200), mm(200)))
            .build();
    Projection none = new Projection(Dimension.NONE, Dimension.NONE);
    Vise vise =
        Vise.builder("vise")
            .jaws(new Jaws(false, 125 * MM, 40 * MM, 125 * MM, 40 * MM, mm(24), mm(48)))
            .opening(Interval.of(0, 125 * MM))
            .base(new Base(55 * MM, mm(165), mm(55), mm(230)))
            .screw(new Screw(none, none, mm(38), mm(22)))
            .handle(new Handle(Dimension.NONE, Dimension.NONE, false, false))
            .mounts(List.of(Mount.baseBolts(mm(85), mm(140), mm(16), mm(16))))
            .turns(Set.of(Orientation.FRONT))
            .build();
    Outcome outcome = Pairing.solve(Settings.DEFAULTS, machine, vise);
    System.out.println(outcome.verdict() + " " + outcome.bestMargin().orElseThrow() / MM + " mm");
  }

  private static Dimension mm(long length) {
    return Dimension.of(length * MM);
  }
}
