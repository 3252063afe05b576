package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.ClampParts;
import org.jawroom.clearance.SweptGuards;
import org.jawroom.clearance.SweptParts;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * Where strap clamps can hold a vise: base and clamps wholly over the table top, no slot required.
 */
public final class ClampRegions {

  /** Takes the place of a mount's name. */
  public static final String NAME = "clamps";

  private ClampRegions() {}

  public static List<Region> of(
      Settings settings, Machine machine, Vise vise, SweptParts body, SweptGuards guards) {
    List<Region> regions = new ArrayList<>();
    for (Orientation turn : Orientation.values()) {
      if (vise.turns().contains(turn) && machine.turns().contains(turn)) {
        places(settings, machine, vise, turn)
            .ifPresent(
                places -> {
                  regions.add(
                      new Region(
                          turn,
                          0,
                          Optional.empty(),
                          OptionalLong.empty(),
                          Strips.of(places),
                          body.with(ClampParts.of(vise, settings.clampRoom())),
                          guards));
                });
      }
    }
    return regions;
  }

  private static Optional<Rectangle> places(
      Settings settings, Machine machine, Vise vise, Orientation turn) {
    return Footprint.base(vise, Orientation.RIGHT)
        .map(
            base ->
                new Rectangle(base.x(), base.y().grown(settings.clampRoom(), settings.clampRoom())))
        .flatMap(
            held ->
                Overhang.within(
                    machine,
                    0,
                    new Rectangle(turn.x(held.x(), held.y()), turn.y(held.x(), held.y()))));
  }
}
