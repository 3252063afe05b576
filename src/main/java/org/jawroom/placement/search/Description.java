package org.jawroom.placement.search;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.MachineGuards;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Overhang;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.bolting.Slotted;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Play;
import org.jawroom.shop.Dimension;

/** Describes the chosen placement for reports. */
public record Description(PreparedMachine machine, PreparedVise vise, MachineGuards guards) {

  public Recommendation of(BestPlace.Choice choice, Interval openings) {
    Candidate seat = choice.seat();
    Region region = seat.region();
    Place place = choice.place();
    Slotted slotted = machine.slotted();
    List<Integer> slots =
        slotted.slots(
            region.mount().orElseThrow(), region.turn(), region.thread().orElseThrow(), place);
    return new Recommendation(
        region.turn(),
        place.x(),
        place.y(),
        region.mount().orElseThrow().name(),
        slots,
        openings,
        seat.space().limit(place, choice.margin()),
        seat.shortfall(place),
        Overhang.at(machine.machine(), vise.base(region.turn()), place),
        choice.margin() < 0 ? Optional.empty() : Optional.of(play(seat, place, slotted, slots)),
        noseNotBelow(region, place, openings));
  }

  private Play play(Candidate seat, Place place, Slotted slotted, List<Integer> slots) {
    Region region = seat.region();
    Rectangle held =
        slotted
            .placesIn(
                slots, region.mount().orElseThrow(), region.turn(), region.thread().orElseThrow())
            .orElseThrow();
    if (machine.settings().maxOverhang().isPresent()) {
      held =
          Overhang.allowed(machine.settings(), machine.machine(), vise.vise(), region.turn())
              .flatMap(held::meet)
              .orElseThrow();
    }
    return seat.space().play(place, held);
  }

  private OptionalLong noseNotBelow(Region region, Place place, Interval openings) {
    Dimension min = machine.machine().noseMin();
    Dimension max = machine.machine().noseMax();
    if (!min.isKnown() || !max.isKnown()) {
      return OptionalLong.empty();
    }
    return NoseSearch.lowest(
        guards.withNose(),
        region.parts(),
        region.turn(),
        place,
        openings,
        Interval.of(min.length(), max.length()));
  }
}
