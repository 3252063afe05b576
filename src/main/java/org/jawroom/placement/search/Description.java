package org.jawroom.placement.search;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.guard.MachineGuards;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.bolting.Overhang;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Play;
import org.jawroom.placement.space.Window;
import org.jawroom.shop.value.Dimension;

/** Describes the chosen placement for reports. */
public record Description(PreparedMachine machine, PreparedVise vise, MachineGuards guards) {

  /** Describes a place of a region over the full opening range, whatever else competes. */
  public Recommendation of(Region region, Place place) {
    return of(region, place, vise.vise().opening());
  }

  /** Describes a place of a region over some openings, whatever else competes. */
  public Recommendation of(Region region, Place place, Interval openings) {
    return of(Candidate.of(region, machine, vise, openings), place);
  }

  /** Describes a position of a candidate, whatever else competes. */
  public Recommendation of(Candidate seat, Place place) {
    Window there = new Window(place.x(), place.x(), place.y(), place.y());
    long margin =
        seat.region().field(seat.openings()).limits(place.x(), place.y()).stream()
            .mapToLong(Limit::margin)
            .min()
            .orElse(Length.ENDLESS);
    return of(
        new BestPlace.Choice(
            seat.settable().filter(tapped -> tapped.space().isClear(0, there)).orElse(seat),
            place,
            margin));
  }

  public Recommendation of(BestPlace.Choice choice) {
    Candidate seat = choice.seat();
    Region region = seat.region();
    Place place = choice.place();
    List<Integer> slots = seat.slots(place);
    boolean isClear = choice.margin() >= 0;
    return new Recommendation(
        region.turn(),
        place.x(),
        place.y(),
        region.fastening(),
        slots,
        seat.openings(),
        seat.space().limit(place, choice.margin()),
        isClear && seat.isSettable(),
        handGap(region, place, seat.openings()),
        seat.shortfall(place),
        Overhang.at(machine.machine(), vise.base(region.turn()), place),
        isClear ? Optional.of(play(seat, place, slots)) : Optional.empty(),
        noseNotBelow(region, place, seat.openings()));
  }

  private Play play(Candidate seat, Place place, List<Integer> slots) {
    // The vise may be moved beyond the positions that the search was limited to.
    return seat.whole().play(place, seat.region().placesIn(slots, machine).orElseThrow());
  }

  private static OptionalLong handGap(Region region, Place place, Interval openings) {
    OptionalLong least = OptionalLong.empty();
    for (Part part : region.parts()) {
      if (part.handle() && part.situation() == Situation.LOADING) {
        Box box = part.over(openings, region.turn()).at(place.x(), place.y());
        OptionalLong gap = region.guards().leastGap(box, Situation.LOADING);
        if (gap.isPresent() && gap.getAsLong() < least.orElse(Long.MAX_VALUE)) {
          least = gap;
        }
      }
    }
    return least;
  }

  /**
   * The least height of the nose over a place of a region and some openings, see {@link
   * Recommendation#noseNotBelow}.
   */
  public OptionalLong noseNotBelow(Region region, Place place, Interval openings) {
    Dimension min = machine.machine().noseMin();
    Dimension max = machine.machine().noseMax();
    if (min.isBlank() || max.isBlank()) {
      return OptionalLong.empty();
    }
    return NoseSearch.lowest(
        guards.withNose(),
        region.parts(),
        region.turn(),
        place,
        openings,
        // Of a range the ends that leave less: from the least nose on, clear up to the greatest.
        Interval.of(min.values(0).lo(), max.values(0).hi()));
  }
}
