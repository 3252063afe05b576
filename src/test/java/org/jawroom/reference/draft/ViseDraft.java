package org.jawroom.reference.draft;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
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
import org.jawroom.shop.vise.VisePart;

/** A mutable draft of a vise. */
public final class ViseDraft {
  public String name = "vise";
  public boolean simple = true;
  public boolean both;
  public long jawWidth;
  public long jawHeight;
  public OptionalLong platesWidth = OptionalLong.empty();
  public OptionalLong platesHeight = OptionalLong.empty();
  public long bedHeight;
  public long openingMin;
  public long openingMax;
  public Dimension baseWidth = Dimension.BLANK;
  public Dimension rearReach = Dimension.BLANK;
  public Dimension frontReach = Dimension.BLANK;
  public Dimension fixedJaw = Dimension.BLANK;
  public Dimension movingJaw = Dimension.BLANK;
  public Dimension rearClosed = Dimension.NONE;
  public Dimension rearOpen = Dimension.NONE;
  public Dimension frontClosed = Dimension.NONE;
  public Dimension frontOpen = Dimension.NONE;
  public Dimension screwHeight = Dimension.BLANK;
  public Dimension screwDiameter = Dimension.BLANK;
  public Dimension handleRadius = Dimension.NONE;
  public Dimension handleDepth = Dimension.BLANK;
  public boolean handleOn;
  public boolean fullSwing;
  public Set<Orientation> turns = EnumSet.allOf(Orientation.class);
  public Dimension boltSpacing = Dimension.BLANK;
  public Dimension boltU = Dimension.BLANK;
  public Dimension holeU = Dimension.BLANK;
  public Dimension holeV = Dimension.BLANK;
  public final List<Mount> mounts = new ArrayList<>();
  public OptionalLong boltGrip = OptionalLong.empty();
  public boolean strapFlange;
  public Optional<BigDecimal> mass = Optional.empty();
  public long tolerance;
  public final List<VisePart> parts = new ArrayList<>();

  /** Builds the vise, its own pair of bolts first unless {@link #boltSpacing} is none. */
  public Vise build() {
    List<Mount> all = new ArrayList<>();
    if (!boltSpacing.isNone()) {
      Dimension rear = boltSpacing;
      Dimension front = boltSpacing;
      if (boltSpacing.isKnown()) {
        rear = Dimension.of(-boltSpacing.length() / 2);
        front = Dimension.of(boltSpacing.length() / 2);
      }
      List<Bolt> pair =
          List.of(new Bolt(boltU, rear, holeU, holeV), new Bolt(boltU, front, holeU, holeV));
      all.add(new Mount(Mount.BASE_BOLTS, true, pair));
    }
    all.addAll(mounts);
    return Vise.builder(name)
        .simple(simple)
        .jaws(
            new Jaws(
                both,
                jawWidth,
                jawHeight,
                platesWidth.orElse(jawWidth),
                platesHeight.orElse(jawHeight),
                fixedJaw,
                movingJaw))
        .opening(new Interval(openingMin, openingMax))
        .base(new Base(bedHeight, baseWidth, rearReach, frontReach))
        .screw(
            new Screw(
                new Projection(rearClosed, rearOpen),
                new Projection(frontClosed, frontOpen),
                screwHeight,
                screwDiameter))
        .handle(new Handle(handleRadius, handleDepth, handleOn, fullSwing))
        .turns(turns)
        .mounts(all)
        .boltGrip(boltGrip)
        .strapFlange(strapFlange)
        .mass(mass)
        .provenance(new Provenance(tolerance, false, "", ""))
        .parts(parts)
        .build();
  }
}
