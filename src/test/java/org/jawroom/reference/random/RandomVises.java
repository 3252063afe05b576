package org.jawroom.reference.random;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.model.RefSlots;
import org.jawroom.reference.random.RandomShops.Feature;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.VisePart;

/** Random vises, their holes generated for a machine's slots. */
final class RandomVises {
  private final Dice dice;
  private final Set<Feature> features;
  private final MachineDraft mill;
  private final ViseDraft vise = new ViseDraft();

  private RandomVises(Dice dice, Set<Feature> features, MachineDraft mill) {
    this.dice = dice;
    this.features = features;
    this.mill = mill;
  }

  static ViseDraft draft(Dice dice, Set<Feature> features, MachineDraft mill) {
    RandomVises random = new RandomVises(dice, features, mill);
    random.body();
    random.screw();
    random.bolts();
    random.parts();
    return random.vise;
  }

  private boolean has(Feature feature) {
    return features.contains(feature);
  }

  private void body() {
    vise.both = has(Feature.BOTH_JAWS) || dice.chance(15);
    vise.jawWidth = dice.mm(80, 180);
    vise.jawHeight = dice.mm(20, 60);
    vise.platesWidth = dice.perhaps(15, 80, 220);
    vise.platesHeight = dice.perhaps(15, 20, 80);
    vise.bedHeight = dice.mm(40, 90);
    vise.openingMin = dice.chance(25) ? dice.mm(0, 40) : 0;
    vise.openingMax = vise.openingMin + 2 * dice.mm(dice.chance(5) ? 0 : 20, 90);
    if (has(Feature.ONE_OPENING)) {
      vise.openingMin = vise.openingMax;
    }
    vise.baseWidth = Dimension.of(2 * dice.mm(40, 100));
    vise.rearReach = dice.dimension(30, 100);
    vise.frontReach = dice.dimension(80, 230);
    vise.fixedJaw = dice.dimension(10, 40);
    vise.movingJaw = dice.dimension(20, 60);
    vise.mass = dice.chance(70) ? Optional.of(new BigDecimal("31.5")) : Optional.empty();
    if (dice.chance(50)) {
      vise.turns = dice.chance(60) ? EnumSet.of(Orientation.FRONT) : RandomMachines.someTurns(dice);
    }
    if (has(Feature.TOLERANCES)) {
      vise.tolerance = dice.among(List.of(0L, Length.MM / 2, Length.MM, 3 * Length.MM / 2));
    }
  }

  private void screw() {
    if (dice.chance(65)) {
      vise.rearClosed = dice.dimension(10, 70);
      if (dice.chance(40)) {
        vise.rearOpen = dice.dimension(0, 30);
      }
    }
    if (dice.chance(60)) {
      vise.frontClosed = dice.dimension(0, 40);
      vise.frontOpen = dice.chance(30) ? dice.dimension(0, 80) : vise.frontClosed;
    }
    vise.screwHeight = dice.dimension(20, 70);
    vise.screwDiameter = Dimension.of(2 * dice.mm(5, 18));
    if (has(Feature.HANDLED) || dice.chance(50)) {
      vise.handleRadius = dice.dimension(20, 120);
      vise.handleDepth = dice.dimension(5, 40);
      vise.handleOn = dice.chance(has(Feature.HANDLED) ? 60 : 30);
      vise.fullSwing = dice.chance(30);
    }
  }

  private void bolts() {
    long d = Math.max(4 * Length.MM, RefSlots.thread(mill.slotWidth.length()));
    boolean tight = has(Feature.KEYED);
    long pitch = mill.slotPitch.isKnown() ? mill.slotPitch.length() : dice.mm(40, 100);
    vise.boltSpacing =
        Dimension.of(
            dice.chance(tight ? 70 : 40) ? pitch * (1 + dice.pick(3)) : 2 * dice.mm(40, 110));
    vise.boltU = dice.dimension(-10, 100);
    vise.holeU = hole(d, tight ? 2 : 60);
    vise.holeV = hole(d, tight ? 2 : 12);
    vise.boltGrip = dice.perhaps(60, 10, 40);
    if (has(Feature.EXTRA_MOUNTS)) {
      if (dice.chance(20)) {
        vise.boltSpacing = Dimension.NONE;
      }
      int count = 1 + dice.pick(2);
      for (int i = 0; i < count; i++) {
        List<Bolt> bolts = new ArrayList<>();
        int holes = 1 + dice.pick(4);
        for (int j = 0; j < holes; j++) {
          long side = j % 2 == 0 ? -1 : 1;
          bolts.add(
              new Bolt(
                  Dimension.of((j / 2) * pitch),
                  Dimension.of(side * pitch / Length.NANOMETRE / 2 * Length.NANOMETRE),
                  hole(d, 6),
                  hole(d, 20)));
        }
        vise.mounts.add(new Mount("mount " + (i + 1), false, bolts));
      }
    }
  }

  /** A hole for thread {@code d} with up to {@code more} mm of play, occasionally too small. */
  private Dimension hole(long d, long more) {
    return Dimension.of(dice.chance(2) ? d - Length.MM : d + Math.abs(dice.mm(0, more)));
  }

  private void parts() {
    if (has(Feature.SHAPE_PARTS)) {
      vise.simple = dice.chance(25);
      int count = 1 + dice.pick(4);
      for (int i = 0; i < count; i++) {
        vise.parts.add(part("part " + (i + 1)));
      }
      if (!vise.simple && dice.chance(40)) {
        vise.parts.add(part(VisePart.HANDLE));
      }
    } else if (dice.chance(10)) {
      vise.parts.add(part("part 1"));
    }
  }

  private VisePart part(String name) {
    Interval closed = span(-120, 200, 5, 150);
    Interval open =
        switch (dice.pick(3)) {
          case 0 -> closed;
          case 1 -> closed.plus(vise.openingMax - vise.openingMin);
          default -> span(-120, 200, 5, 150);
        };
    long low = dice.chance(30) ? dice.mm(-60, 0) : dice.mm(0, 60);
    return new VisePart(
        name,
        dice.among(List.of(When.ALWAYS, When.ALWAYS, When.CUTTING, When.LOADING)),
        closed,
        open,
        span(-120, 20, 10, 150),
        new Interval(low, low + dice.mm(5, 100)),
        has(Feature.TOLERANCES) ? dice.perhaps(50, 0, 3) : OptionalLong.empty());
  }

  private Interval span(long low, long high, long least, long most) {
    long from = dice.mm(low, high);
    return new Interval(from, from + dice.mm(least, most));
  }
}
