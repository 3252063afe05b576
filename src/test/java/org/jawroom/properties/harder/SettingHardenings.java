package org.jawroom.properties.harder;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.jawroom.shop.vise.VisePart;

/** What asks for more room, or trusts the numbers less. */
final class SettingHardenings {
  private static final long LARGE = 400 * Length.MM;

  private SettingHardenings() {}

  static List<Hardening> all() {
    return List.of(
        Hardening.of("more clearance", (shop, by, pick) -> shop.settings.clearance += by),
        Hardening.of("more hand room", (shop, by, pick) -> shop.settings.handRoom += by),
        Hardening.of(
            "more clearance of a guard's own",
            (shop, by, pick) ->
                shop.mill.guards.replaceAll(
                    ShopChange.guard(
                        guard ->
                            guard.clearance =
                                OptionalLong.of(
                                    guard.clearance.orElse(shop.settings.clearance) + by)))),
        Hardening.of(
            "more tolerance of the machine", (shop, by, pick) -> shop.mill.tolerance += by),
        Hardening.of(
            "more tolerance of a guard's own",
            (shop, by, pick) ->
                shop.mill.guards.replaceAll(
                    ShopChange.guard(
                        guard ->
                            guard.tolerance =
                                OptionalLong.of(
                                    guard.tolerance.orElse(shop.mill.tolerance) + by)))),
        Hardening.of("more tolerance of the vise", (shop, by, pick) -> shop.vise.tolerance += by),
        Hardening.of(
            "more tolerance of a part's own",
            (shop, by, pick) ->
                shop.vise.parts.replaceAll(
                    part -> toleranceOf(part, part.tolerance().orElse(shop.vise.tolerance) + by))),
        Hardening.prepared(
            "a shorter shortest tool, the nose going down to the table",
            (shop, by, pick) -> {
              shop.mill.noseMin = ShopChange.known(shop.mill.noseMin, old -> 0);
              shop.settings.shortestTool = OptionalLong.of(2 * by);
            },
            (shop, by, pick) -> shop.settings.shortestTool = OptionalLong.of(by)),
        Hardening.prepared(
            "a shortest tool at all",
            (shop, by, pick) -> shop.settings.shortestTool = OptionalLong.empty(),
            (shop, by, pick) -> shop.settings.shortestTool = OptionalLong.of(by)),
        Hardening.prepared(
            "less overhang",
            (shop, by, pick) ->
                shop.settings.maxOverhang =
                    OptionalLong.of(shop.settings.maxOverhang.orElse(LARGE) + by),
            (shop, by, pick) ->
                shop.settings.maxOverhang =
                    OptionalLong.of(shop.settings.maxOverhang.getAsLong() / 4 * 2)),
        Hardening.of(
            "a larger least opening", (shop, by, pick) -> shop.settings.leastOpening += by));
  }

  private static VisePart toleranceOf(VisePart part, long tolerance) {
    return new VisePart(
        part.name(),
        part.when(),
        part.uClosed(),
        part.uOpen(),
        part.v(),
        part.w(),
        OptionalLong.of(tolerance));
  }
}
