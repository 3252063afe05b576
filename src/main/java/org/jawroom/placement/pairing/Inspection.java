package org.jawroom.placement.pairing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.TurnedRectangle;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.bolting.slot.Anchors;
import org.jawroom.placement.bolting.slot.Slotted;
import org.jawroom.placement.search.Alternative;
import org.jawroom.placement.search.BestPlace;
import org.jawroom.placement.search.Candidate;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Play;
import org.jawroom.placement.space.Strips;
import org.jawroom.placement.space.Window;
import org.jawroom.shop.machine.Sides;

/** Details of a recommended placement and its alternatives. */
public final class Inspection {
  private final PreparedMachine machine;
  private final PreparedVise vise;
  private final Model model;
  private final List<Region> regions;
  private final Region own;
  private final Recommendation recommended;
  private final Optional<Rectangle> work;

  Inspection(Model model, List<Region> regions, Region own, Recommendation recommended) {
    this(model, regions, own, recommended, Optional.empty());
  }

  private Inspection(
      Model model,
      List<Region> regions,
      Region own,
      Recommendation recommended,
      Optional<Rectangle> work) {
    this.work = work;
    this.machine = model.machine();
    this.vise = model.vise();
    this.model = model;
    this.regions = regions;
    this.own = own;
    this.recommended = recommended;
  }

  /**
   * Details of a placement in a region, such as that of a job; no other region competes.
   *
   * @param work what the spindle is to reach, of the vise standing at the origin
   */
  public static Inspection of(Model model, Region own, Recommendation place, Rectangle work) {
    return new Inspection(model, List.of(own), own, place, Optional.of(work));
  }

  /** Details of a place of a region over the full opening range; no other region competes. */
  public static Inspection at(Model model, Region own, Place place) {
    return at(model, own, place, model.vise().vise().opening());
  }

  /** Details of a place of a region over some openings; no other region competes. */
  public static Inspection at(Model model, Region own, Place place, Interval openings) {
    return new Inspection(model, List.of(own), own, model.description().of(own, place, openings));
  }

  /** The same with another least height of the nose. */
  public Inspection withNoseNotBelow(OptionalLong nose) {
    return new Inspection(model, regions, own, recommended.withNoseNotBelow(nose), work);
  }

  /** The placement that the details are of. */
  public Recommendation place() {
    return recommended;
  }

  /** Every part–guard pair at the recommended placement, in ascending order of margin. */
  public List<Limit> pairs() {
    return own.field(recommended.openings()).limits(recommended.x(), recommended.y());
  }

  /**
   * The placement with the largest margin over the same openings, if it exceeds that of the
   * recommended one.
   */
  public Optional<Roomiest> roomiest() {
    Roomiest roomiest = Roomiest.of(new BestPlace(regions.stream().map(this::seat).toList()));
    long here = recommended.limit().map(Limit::margin).orElse(Long.MAX_VALUE);
    return Optional.of(roomiest).filter(place -> margin(place).orElse(Long.MAX_VALUE) > here);
  }

  /**
   * The recommended placement of each other turn and mount over the same openings, in order of
   * preference.
   */
  @SuppressWarnings("ReferenceEquality") // that one, not one like it
  public List<Alternative> others() {
    List<Alternative> others = new ArrayList<>();
    for (Region region : regions) {
      if (region != own) {
        BestPlace places = new BestPlace(List.of(seat(region)));
        BestPlace.Choice choice = places.recommended();
        Roomiest best = Roomiest.of(choice);
        others.add(
            new Alternative(
                region.turn(),
                best.mount(),
                best,
                margin(best),
                choice.seat().shortfall(choice.place()),
                choice.margin() >= 0 && choice.seat().isSettable()));
      }
    }
    return others;
  }

  /** How far the work area protrudes from the spindle's reach on each side; 0 if it does not. */
  public Sides<Long> reachShort() {
    Rectangle work = vise.workArea(recommended.handleTo()).at(recommended.x(), recommended.y());
    Rectangle reach = machine.reach();
    return new Sides<>(
        Math.max(0, reach.y().lo() - work.y().lo()),
        Math.max(0, work.y().hi() - reach.y().hi()),
        Math.max(0, reach.x().lo() - work.x().lo()),
        Math.max(0, work.x().hi() - reach.x().hi()));
  }

  /**
   * How far the vise may stand from the recommended placement, along x and along y, for a setter to
   * choose: with margin ≥ 0 over the same openings all the way, its bolts or clamps in the slots
   * reported, reached no worse than there, and settable all the way if the placement itself is.
   * Empty if its margin is negative.
   */
  public Optional<Play> range() {
    if (recommended.play().isEmpty()) {
      return Optional.empty();
    }
    Place place = new Place(recommended.x(), recommended.y());
    Rectangle held = own.placesIn(recommended.slots(), machine).orElseThrow();
    Window reached = seat(own).reaching(recommended.reachShortfall());
    Rectangle allowed =
        held.meet(
                new Rectangle(
                    Interval.of(reached.xLo(), reached.xHi()),
                    Interval.of(reached.yLo(), reached.yHi())))
            .orElseThrow();
    if (!recommended.settable()) {
      return Optional.of(own.space(recommended.openings()).play(place, allowed));
    }
    Strips strips = own.settable(machine).orElseThrow();
    Rectangle settable =
        strips.rectangles().stream()
            .filter(strip -> strip.contains(place.x(), place.y()))
            .findFirst()
            .flatMap(allowed::meet)
            .orElseThrow();
    FreeSpace free = own.space(recommended.openings()).tapped(strips, machine.settings().tapRoom());
    return Optional.of(free.play(place, settable));
  }

  /** The geometry of the recommended placement. */
  public Layout layout() {
    Region region = own;
    Anchors anchors = region.fastening().anchors().orElseThrow();
    Interval openings = recommended.openings();
    Place place = new Place(recommended.x(), recommended.y());
    Slotted slotted = machine.slotted();
    return new Layout(
        openings,
        region.parts().stream()
            .filter(part -> part.role() != PartRole.BOLT)
            .map(part -> placed(part, region.turn(), place))
            .toList(),
        model.guards().swept(),
        model.isOpen() ? model.atBest().guards().swept() : model.guards().swept(),
        slotted.centres(),
        slotted.bolts(anchors, region.turn(), place),
        region.fastening().thread().orElse(anchors.nutRoom()),
        machine.reach(),
        vise.workArea(region.turn()).at(place.x(), place.y()));
  }

  private Layout.PlacedPart placed(Part part, Orientation turn, Place place) {
    Interval openings = recommended.openings();
    Interval least = Interval.of(openings.lo(), openings.lo());
    Interval greatest = Interval.of(openings.hi(), openings.hi());
    return new Layout.PlacedPart(
        part,
        placed(part, least, turn, place),
        placed(part, greatest, turn, place),
        placed(part, openings, turn, place),
        surely(part, least, turn, place),
        surely(part, greatest, turn, place),
        part.outline().stream()
            .flatMap(outline -> outline.corners().stream())
            .map(corner -> placed(corner, turn, place))
            .toList());
  }

  private static Place placed(TurnedRectangle.Corner corner, Orientation turn, Place place) {
    Interval u = Interval.of(corner.u(), corner.u());
    Interval v = Interval.of(corner.v(), corner.v());
    return new Place(turn.x(u, v).lo() + place.x(), turn.y(u, v).lo() + place.y());
  }

  /** What all values of a part's open readings share; clamps and work are taken as they are. */
  private Optional<Box> surely(Part part, Interval opening, Orientation turn, Place place) {
    boolean isBody = part.role() != PartRole.CLAMP && part.role() != PartRole.WORK;
    return (isBody ? vise.atBest().body().parts() : List.of(part))
        .stream()
            .filter(best -> best.isSameAs(part) && !best.u().isEmpty(opening))
            .map(best -> placed(best, opening, turn, place))
            .findFirst();
  }

  private static Box placed(Part part, Interval openings, Orientation turn, Place place) {
    return part.over(openings, turn).at(place.x(), place.y());
  }

  private static OptionalLong margin(Roomiest place) {
    return place.limit().isPresent()
        ? OptionalLong.of(place.limit().get().margin())
        : OptionalLong.empty();
  }

  private Candidate seat(Region region) {
    Interval openings = recommended.openings();
    return work.map(area -> Candidate.of(region, machine, openings, area))
        .orElseGet(() -> Candidate.of(region, machine, vise, openings));
  }
}
