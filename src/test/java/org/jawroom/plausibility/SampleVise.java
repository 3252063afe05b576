package org.jawroom.plausibility;

import static org.jawroom.plausibility.SampleMachine.half;
import static org.jawroom.plausibility.SampleMachine.mm;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** A vise about which nothing looks wrong, to be spoilt in one place; numbers in millimetres. */
final class SampleVise {
  String name = "vise";
  double jawWidth = 150;
  Dimension baseWidth = mm(200);
  Dimension rearReach = mm(60);
  Dimension frontReach = mm(240);
  Dimension fixedThickness = mm(30);
  Dimension screwHeight = mm(45);
  Dimension screwDiameter = mm(30);
  Projection rear = new Projection(mm(40), Dimension.NONE);
  Projection front = new Projection(mm(20), mm(20));
  Handle handle = new Handle(mm(120), mm(40), false, false);
  Dimension spacing = mm(170);
  Dimension boltU = mm(90);
  Dimension hole = mm(20);
  Set<Orientation> turns = EnumSet.of(Orientation.FRONT);
  Provenance provenance = new Provenance(half(1), false, "rule", "");
  List<VisePart> parts = List.of();

  Vise build() {
    return Vise.builder(name)
        .jaws(
            new Jaws(
                false, half(jawWidth), half(40), half(jawWidth), half(40), fixedThickness, mm(50)))
        .opening(Interval.of(0, half(150)))
        .base(new Base(half(60), baseWidth, rearReach, frontReach))
        .screw(new Screw(rear, front, screwHeight, screwDiameter))
        .handle(handle)
        .turns(turns)
        .mounts(List.of(Mount.baseBolts(boltU, spacing, hole, hole)))
        .provenance(provenance)
        .parts(parts)
        .build();
  }
}
