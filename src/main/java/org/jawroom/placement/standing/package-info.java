/**
 * A vise where it stands now (section 11 of the model).
 *
 * <p><b>In:</b> settings and a {@link org.jawroom.shop.Standing}: a machine, a vise, the place by
 * two measures with their tolerance, a mount. <b>Out:</b> a {@link
 * org.jawroom.placement.standing.StandingOutcome}: whether the mount holds at some place within the
 * tolerance; the least margin over the full opening at every place within it (both ends closed,
 * without hand room) and its witness; the widest opening with margin ≥ 0 at all of these places;
 * the way to the recommended place. The entry point is {@link
 * org.jawroom.placement.standing.StandingPairing}.
 *
 * <p>Parts grown by the tolerance along u and v cover every place within it, so the margin of the
 * grown parts at the place as measured is never more than the least of all these places.
 */
package org.jawroom.placement.standing;
