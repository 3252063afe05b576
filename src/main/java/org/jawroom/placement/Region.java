package org.jawroom.placement;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Pair;
import org.jawroom.clearance.Part;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.Turn;
import org.jawroom.shop.Mount;

/**
 * One turn and one mount: where on the table that holds, and what could be hit there.
 *
 * @param mountIndex the mount's place in input order
 * @param mount empty where strap clamps take its place
 * @param thread the bolts' diameter; empty where a blank leaves the bolts out, and with clamps
 * @param places closed rectangles of the vise frame's origin, one at least
 * @param parts of the vise and its bolts, {@code pairs} of them and the guards
 */
record Region(
    Turn turn,
    int mountIndex,
    Optional<Mount> mount,
    OptionalLong thread,
    List<Rectangle> places,
    List<Part> parts,
    List<Pair> pairs) {

  /** The same with other parts and the pairs of them. */
  Region with(List<Part> parts, List<Pair> pairs) {
    return new Region(turn, mountIndex, mount, thread, places, parts, pairs);
  }
}
