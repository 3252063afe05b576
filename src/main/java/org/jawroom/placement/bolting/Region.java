package org.jawroom.placement.bolting;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.MarginField;
import org.jawroom.clearance.Obstacles;
import org.jawroom.clearance.Pair;
import org.jawroom.clearance.Part;
import org.jawroom.clearance.SweptGuards;
import org.jawroom.clearance.SweptParts;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.space.FreeSpace;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Mount;

/**
 * One turn and one mount: where on the table that holds, and what could be hit there.
 *
 * @param mountIndex the mount's place in input order
 * @param mount empty where strap clamps take its place
 * @param thread the bolts' diameter; empty where a blank leaves the bolts out, and with clamps
 * @param places of the vise frame's origin
 * @param swept the parts of the vise and its bolts, over the full range of openings
 */
public record Region(
    Orientation turn,
    int mountIndex,
    Optional<Mount> mount,
    OptionalLong thread,
    Strips places,
    SweptParts swept,
    SweptGuards guards) {

  /** The same with other parts. */
  public Region with(SweptParts parts) {
    return new Region(turn, mountIndex, mount, thread, places, parts, guards);
  }

  public List<Part> parts() {
    return swept.parts();
  }

  /** Every pair of a part and a guard, in the order in which equal margins are told apart. */
  public List<Pair> pairs() {
    return Pair.all(guards.handRoom(), swept.parts(), guards.all());
  }

  /** The free space over a range of openings. */
  public FreeSpace space(Interval openings) {
    return FreeSpace.of(places, Obstacles.of(swept.over(openings), guards, turn));
  }

  /** See {@link FreeSpace#belowZero}. */
  public FreeSpace spaceBelowZero(Interval openings) {
    return FreeSpace.belowZero(places, Obstacles.of(swept.over(openings), guards, turn));
  }

  /** The margin over a range of openings, pair by pair. */
  public MarginField field(Interval openings) {
    return MarginField.of(pairs(), turn, openings);
  }
}
