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
 * One turn and one mount: the positions at which it holds, and the parts and guards there.
 *
 * @param mountIndex index of the mount in input order
 * @param mount empty for strap clamps
 * @param thread the bolts' diameter; empty if a blank leaves the bolts out, and for clamps
 * @param places positions of the vise frame's origin at which it holds
 * @param swept the parts of the vise and its bolts, over the full opening range
 */
public record Region(
    Orientation turn,
    int mountIndex,
    Optional<Mount> mount,
    OptionalLong thread,
    Strips places,
    SweptParts swept,
    SweptGuards guards) {

  /** A copy with other parts. */
  public Region with(SweptParts parts) {
    return new Region(turn, mountIndex, mount, thread, places, parts, guards);
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
    return FreeSpace.of(places, Obstacles.of(swept.over(openings), guards, turn));
  }

  /** See {@link FreeSpace#belowZero}. */
  public FreeSpace spaceBelowZero(Interval openings) {
    return FreeSpace.belowZero(places, Obstacles.of(swept.over(openings), guards, turn));
  }

  /** The margin over an opening range, with its pairs kept separate. */
  public MarginField field(Interval openings) {
    return MarginField.of(pairs(), turn, openings);
  }
}
