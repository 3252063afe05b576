package org.jawroom.reference.random;

import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.reference.model.RefSlots;
import org.jawroom.reference.random.RandomShops.Feature;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Dimension;

/** Random strap flanges, holes for smaller threads, short slots and low handles. */
final class RandomMounting {
  private RandomMounting() {}

  static Settings settings(Dice dice, Set<Feature> features, Settings given) {
    boolean coarse = features.contains(Feature.COARSE);
    List<Long> taps = coarse ? List.of(0L, 2L, 10L, 15L, 20L) : List.of(2L, 2L, 0L, 1L, 5L);
    return given.toBuilder()
        .tapRoom(dice.among(taps) * Length.MM)
        .smallerThreads(dice.chance(80))
        .clampRoom(dice.among(List.of(60L, 60L, 60L, 30L, 100L, 20L)) * Length.MM)
        .build();
  }

  static void change(Dice dice, Set<Feature> features, MachineDraft mill, ViseDraft vise) {
    if (features.contains(Feature.STRAPPED)) {
      straps(dice, vise);
    }
    if (features.contains(Feature.SMALL_HOLES)) {
      vise.holeU = Dimension.of(hole(dice, mill, 40));
      vise.holeV = Dimension.of(hole(dice, mill, 8));
    }
    if (features.contains(Feature.SHORT_SLOTS)) {
      shortSlots(dice, mill, vise);
    }
    if (features.contains(Feature.LOW_HANDLE)) {
      lowHandle(dice, vise);
    }
  }

  private static void straps(Dice dice, ViseDraft vise) {
    vise.strapFlange = dice.chance(85);
    if (dice.chance(25)) {
      vise.boltSpacing = Dimension.NONE;
    }
  }

  /** A hole for the thread of the slot or one of the four next smaller ones. */
  private static long hole(Dice dice, MachineDraft mill, long more) {
    List<Long> series = List.of(22L, 18L, 14L, 12L, 10L, 8L, 6L, 5L);
    long slot = mill.slotWidth.length();
    for (int i = dice.among(List.of(0, 1, 1, 2, 2, 2, 3)); i > 0; i--) {
      long now = slot;
      slot =
          series.stream()
              .map(width -> width * Length.MM)
              .filter(width -> RefSlots.thread(width) < RefSlots.thread(now))
              .findFirst()
              .orElse(now);
    }
    return RefSlots.thread(slot) + dice.mm(0, more);
  }

  /** Slots that end near the bolts in some turn, or near the ends of the base. */
  private static void shortSlots(Dice dice, MachineDraft mill, ViseDraft vise) {
    long reach =
        switch (dice.pick(3)) {
          case 0 -> vise.boltSpacing.isKnown() ? vise.boltSpacing.length() / 2 : 0;
          case 1 -> vise.baseWidth.length() / 2;
          default -> (vise.rearReach.length() + vise.frontReach.length()) / 2;
        };
    long half = Math.max(0, reach + dice.mm(-30, 40));
    mill.slotLength = OptionalLong.of(Length.floorTo(2 * half, Length.NANOMETRE));
    if (dice.chance(10)) {
      mill.slotLength = OptionalLong.of(dice.mm(0, 40));
    }
    if (dice.chance(30)) {
      mill.slotDirection = mill.slotDirection == Axis.X ? Axis.Y : Axis.X;
    }
  }

  /** A handle that passes the table's edge or a guard by less than a hand wants. */
  private static void lowHandle(Dice dice, ViseDraft vise) {
    vise.fullSwing = dice.chance(50);
    if (vise.fullSwing) {
      vise.handleRadius = dice.dimension(15, 60);
      vise.screwHeight = Dimension.of(vise.handleRadius.length() + dice.mm(0, 30));
    } else {
      vise.handleRadius = dice.dimension(40, 140);
      vise.screwHeight = Dimension.of(vise.screwDiameter.length() / 2 + dice.mm(0, 30));
    }
    vise.screwHeight = Dimension.of(Length.floorTo(vise.screwHeight.length(), Length.NANOMETRE));
    vise.handleOn = dice.chance(20);
  }
}
