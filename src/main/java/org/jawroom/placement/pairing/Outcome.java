package org.jawroom.placement.pairing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.Column;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/**
 * All that is found out about one pairing; every report reads this and computes nothing.
 *
 * @param bestMargin over all turns, mounts and positions, over the full opening range; empty where
 *     nothing listed can be hit, for {@code no mount} and {@code unknown}, and for a pairing that
 *     is hopeless whatever its blanks are
 * @param recommended empty for {@code no mount}, {@code unknown} and the hopeless
 * @param usableOpening for {@code fits} the full range, for {@code limited} the widest usable part
 *     with its ends drawn in to 0.01 mm; else empty
 * @param roomOverJaws nose at its highest to the top of the jaws, negative if they do not go under
 *     it; empty for {@code unknown} or where a blank leaves it open
 * @param loadLeft kg the table still carries with the vise on, negative if it is too heavy; empty
 *     likewise
 * @param shortestToolTooShort whether the shortest tool does not clear the vise's bed with the nose
 *     at its highest, so that the nose was taken to stand there
 * @param missing for {@code unknown}: the blank columns, once each, in the order of the tables
 */
public record Outcome(
    Machine machine,
    Vise vise,
    Verdict verdict,
    OptionalLong bestMargin,
    Optional<Recommendation> recommended,
    Optional<Interval> usableOpening,
    OptionalLong roomOverJaws,
    Optional<BigDecimal> loadLeft,
    boolean shortestToolTooShort,
    List<Column> missing) {
  public Outcome {
    missing = List.copyOf(missing);
  }
}
