package org.jawroom.placement.bolting;

import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.MarginField;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.obstacle.Obstacles;
import org.jawroom.clearance.obstacle.SweptGuards;
import org.jawroom.clearance.obstacle.SweptParts;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;

/**
 * One turn and one mount: the positions at which it holds, and the parts and guards there.
 *
 * @param places positions of the vise frame's origin at which it holds
 * @param onTable the positions at which base and straps lie wholly over the table top, for clamps
 *     alone; else everywhere
 * @param allowed the positions within the greatest overhang
 * @param swept the parts of the vise and its bolts or clamps, over the full opening range
 * @param tapped what {@link #settable} has found; it depends neither on parts nor on guards
 */
public record Region(
    Orientation turn,
    Fastening fastening,
    Strips places,
    Rectangle onTable,
    Rectangle allowed,
    SweptParts swept,
    SweptGuards guards,
    Tapped tapped) {

  /** A rectangle that holds every position. */
  public static final Rectangle EVERYWHERE = new Rectangle(Interval.ALL, Interval.ALL);

  public Region(
      Orientation turn,
      Fastening fastening,
      Strips places,
      Rectangle onTable,
      Rectangle allowed,
      SweptParts swept,
      SweptGuards guards) {
    this(turn, fastening, places, onTable, allowed, swept, guards, new Tapped());
  }

  /** A copy with other parts. */
  public Region with(SweptParts parts) {
    return new Region(turn, fastening, places, onTable, allowed, parts, guards, tapped);
  }

  /** A copy with other guards. */
  public Region with(SweptGuards others) {
    return new Region(turn, fastening, places, onTable, allowed, swept, others, tapped);
  }

  /**
   * The vise at one position, whether or not its mount holds there.
   *
   * @param off how far it may stand off along x and y: its parts cover all that they may cover
   */
  public Region at(Place place, long off) {
    Rectangle point =
        new Rectangle(Interval.of(place.x(), place.x()), Interval.of(place.y(), place.y()));
    SweptParts parts = off == 0 ? swept : swept.grown(off);
    return new Region(turn, fastening, Strips.of(Axis.X, point), onTable, allowed, parts, guards);
  }

  /**
   * The positions at which bolts or clamps let the vise be tapped square, see section 6 of the
   * model; empty if there are none. Whatever it could hit is not considered.
   */
  public Optional<Strips> settable(PreparedMachine machine) {
    long tap = machine.settings().tapRoom();
    if (tap == 0 || fastening.anchors().isEmpty()) {
      return Optional.of(places);
    }
    return tapped.on(
        machine,
        () ->
            machine
                .slotted()
                .settable(fastening.anchors().get(), turn, tap, onTable)
                .flatMap(held -> held.meet(allowed)));
  }

  /**
   * The positions at which the anchors stand in the slots listed and the vise is on the table and
   * within what is allowed.
   */
  public Optional<Rectangle> placesIn(List<Integer> slots, PreparedMachine machine) {
    return machine
        .slotted()
        .placesIn(slots, fastening.anchors().orElseThrow(), turn)
        .flatMap(onTable::meet)
        .flatMap(allowed::meet);
  }

  public List<Part> parts() {
    return swept.parts();
  }

  /** Every pair of a part and a guard, in order of precedence among equal margins. */
  public List<Pair> pairs() {
    return Pair.all(guards.handRoom(), swept.parts(), guards.all());
  }

  /** The free space over an opening range. */
  public FreeSpace space(Interval openings) {
    return FreeSpace.of(places, obstacles(openings));
  }

  /** See {@link FreeSpace#belowZero}. */
  public FreeSpace spaceBelowZero(Interval openings) {
    return FreeSpace.belowZero(places, obstacles(openings));
  }

  /** The free space of settable positions; empty if there are none. */
  public Optional<FreeSpace> settableSpace(PreparedMachine machine, Interval openings) {
    return settable(machine)
        .map(held -> space(openings).tapped(held, machine.settings().tapRoom()));
  }

  private Obstacles obstacles(Interval openings) {
    return Obstacles.of(swept.over(openings), guards, turn);
  }

  /** The margin over an opening range, with its pairs kept separate. */
  public MarginField field(Interval openings) {
    return MarginField.of(pairs(), turn, openings);
  }
}
