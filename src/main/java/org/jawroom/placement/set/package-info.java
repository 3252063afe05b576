/**
 * Different vises on one table (section 11 of the model).
 *
 * <p><b>In:</b> settings, a machine and a set of vises. <b>Out:</b> a {@link
 * org.jawroom.placement.set.SetOutcome}: whether they stand in a row along the slots, each with
 * margin ≥ 0 over its full opening without hand room, neighbours at least the spacing apart; where,
 * with the largest least margin or gap; or what keeps them from it. The entry point is {@link
 * org.jawroom.placement.set.SetPairing}.
 *
 * <p>{@link org.jawroom.placement.set.SetJobs} says which jobs the vises of such a row hold, each
 * in its place there.
 *
 * <p>Reach, settable places and the masses together are not part of the answer; the outcome has the
 * first two beside each place.
 */
package org.jawroom.placement.set;
