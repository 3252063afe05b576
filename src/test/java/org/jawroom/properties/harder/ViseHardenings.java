package org.jawroom.properties.harder;

import java.util.List;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.jawroom.geometry.Interval;
import org.jawroom.properties.NeverBetter;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.VisePart;

/**
 * What makes a vise harder to place. A reach, a projection or a height that carries something else
 * outward with it may also take that out of the way, so it counts only where it carries nothing.
 */
final class ViseHardenings {
  private ViseHardenings() {}

  /** Straps are as long as the base and stand beside it, so that a larger base moves them. */
  static List<Hardening> all() {
    return List.of(
        Hardening.of(
            "thicker fixed jaw",
            (shop, by, pick) -> shop.vise.fixedJaw = ShopChange.plus(shop.vise.fixedJaw, by)),
        Hardening.of(
            "thicker moving jaw",
            (shop, by, pick) -> shop.vise.movingJaw = ShopChange.plus(shop.vise.movingJaw, by)),
        Hardening.of(
            "wider plates",
            (shop, by, pick) ->
                shop.vise.platesWidth =
                    OptionalLong.of(shop.vise.platesWidth.getAsLong() + 2 * by)),
        Hardening.of(
            "taller plates",
            (shop, by, pick) ->
                shop.vise.platesHeight = OptionalLong.of(shop.vise.platesHeight.getAsLong() + by)),
        Hardening.of("wider jaws", (shop, by, pick) -> shop.vise.jawWidth += 2 * by),
        Hardening.of("taller jaws", (shop, by, pick) -> shop.vise.jawHeight += by),
        Hardening.prepared(
            "wider base, no straps beside it",
            (shop, by, pick) -> shop.vise.strapFlange = false,
            (shop, by, pick) -> {
              // Of a vise whose bolts are open, a wider base may stand farther out.
              if (!NeverBetter.blank(shop.solve())) {
                shop.vise.baseWidth = ShopChange.plus(shop.vise.baseWidth, 2 * by);
              }
            }),
        Hardening.prepared(
            "longer base at the rear, no screw there and no straps beside it",
            (shop, by, pick) -> {
              shop.vise.strapFlange = false;
              shop.vise.rearClosed = Dimension.NONE;
              shop.vise.rearOpen = Dimension.NONE;
            },
            (shop, by, pick) -> {
              if (!NeverBetter.blank(shop.solve())) {
                shop.vise.rearReach = ShopChange.plus(shop.vise.rearReach, by);
              }
            }),
        Hardening.prepared(
            "longer base at the front, no screw nor handle there and no straps beside it",
            (shop, by, pick) -> {
              shop.vise.strapFlange = false;
              shop.vise.frontClosed = Dimension.NONE;
              shop.vise.frontOpen = Dimension.NONE;
              shop.vise.handleRadius = Dimension.NONE;
            },
            (shop, by, pick) -> {
              if (!NeverBetter.blank(shop.solve())) {
                shop.vise.frontReach = ShopChange.plus(shop.vise.frontReach, by);
              }
            }),
        Hardening.of(
            "longer screw at the rear",
            (shop, by, pick) -> {
              shop.vise.rearClosed = ShopChange.plus(shop.vise.rearClosed, by);
              shop.vise.rearOpen = ShopChange.plus(shop.vise.rearOpen, pick % 2 * by);
            }),
        Hardening.prepared(
            "longer screw at the front, no handle there",
            (shop, by, pick) -> shop.vise.handleRadius = Dimension.NONE,
            (shop, by, pick) -> {
              shop.vise.frontClosed = ShopChange.plus(shop.vise.frontClosed, pick % 2 * by);
              shop.vise.frontOpen = ShopChange.plus(shop.vise.frontOpen, by);
            }),
        Hardening.of(
            "thicker screw",
            (shop, by, pick) ->
                shop.vise.screwDiameter = ShopChange.plus(shop.vise.screwDiameter, 2 * by)),
        Hardening.of(
            "longer handle",
            (shop, by, pick) ->
                shop.vise.handleRadius = ShopChange.plus(shop.vise.handleRadius, by)),
        Hardening.of(
            "deeper handle",
            (shop, by, pick) -> shop.vise.handleDepth = ShopChange.plus(shop.vise.handleDepth, by)),
        Hardening.of("handle on while cutting", (shop, by, pick) -> shop.vise.handleOn = true),
        Hardening.prepared(
            "handle swung full circle",
            (shop, by, pick) -> {
              // A screw thicker than its handle is long would reach lower over the top.
              if (longerThanScrewIsThick(shop)) {
                shop.vise.fullSwing = false;
              }
            },
            (shop, by, pick) -> shop.vise.fullSwing |= longerThanScrewIsThick(shop)),
        Hardening.prepared(
            "a handle at all",
            (shop, by, pick) -> shop.vise.handleRadius = Dimension.NONE,
            (shop, by, pick) -> {
              shop.vise.handleRadius = Dimension.of(by);
              shop.vise.handleDepth = Dimension.of(by);
            }),
        Hardening.prepared(
            "bolts that stand higher",
            (shop, by, pick) ->
                shop.vise.boltGrip =
                    OptionalLong.of(shop.vise.boltGrip.orElse(shop.vise.bedHeight)),
            (shop, by, pick) ->
                shop.vise.boltGrip = OptionalLong.of(shop.vise.boltGrip.getAsLong() + by)),
        Hardening.of("larger parts", (shop, by, pick) -> shop.vise.parts.replaceAll(larger(by))),
        Hardening.of(
            "parts that count always",
            (shop, by, pick) -> shop.vise.parts.replaceAll(ViseHardenings::always)),
        Hardening.prepared(
            "a part more",
            (shop, by, pick) -> {
              if (!shop.vise.parts.isEmpty()) {
                shop.vise.parts.remove(pick % shop.vise.parts.size());
              }
            },
            (shop, by, pick) -> shop.vise.parts.add(block(by))),
        Hardening.of(
            "a turn less",
            (shop, by, pick) -> shop.vise.turns = MachineHardenings.without(shop.vise.turns, pick)),
        Hardening.of("no straps", (shop, by, pick) -> shop.vise.strapFlange = false),
        Hardening.of(
            "a mount less",
            (shop, by, pick) -> {
              if (!shop.vise.mounts.isEmpty()) {
                shop.vise.mounts.remove(pick % shop.vise.mounts.size());
              }
            }));
  }

  private static boolean longerThanScrewIsThick(ShopDraft shop) {
    return shop.vise.handleRadius.isKnown()
        && shop.vise.screwDiameter.isKnown()
        && 2 * shop.vise.handleRadius.length() >= shop.vise.screwDiameter.length();
  }

  private static UnaryOperator<VisePart> larger(long by) {
    return part ->
        new VisePart(
            part.name(),
            part.when(),
            part.uClosed().grown(by, by),
            part.uOpen().grown(by, by),
            part.v().grown(by, by),
            part.w().grown(by, by),
            part.tolerance());
  }

  private static VisePart always(VisePart part) {
    return new VisePart(
        part.name(),
        When.ALWAYS,
        part.uClosed(),
        part.uOpen(),
        part.v(),
        part.w(),
        part.tolerance());
  }

  private static VisePart block(long by) {
    Interval all = new Interval(-2 * by, 2 * by);
    return new VisePart(
        "block", When.ALWAYS, all, all, all, new Interval(0, by), OptionalLong.empty());
  }
}
