/**
 * What to tape first: the open readings that decide unknown pairings.
 *
 * <p><b>In:</b> an unknown pairing, its open readings (blank, or known within bounds only) and
 * their limits ({@link org.jawroom.advice.blank.BlankLimits}). <b>Out:</b> {@link
 * org.jawroom.advice.tape.Deciding} for each reading that may decide it, and for a shop {@link
 * org.jawroom.advice.ToTape}, the readings in the order in which they are taped.
 *
 * <p><b>Matters.</b> A reading matters to a pairing if, every other open reading at best, some of
 * its values let the verdict be {@code fits} and some do not. With a limit that is exact: the limit
 * lies within its range, and the range reaches beyond it. Without one (slot width and pitch, holes
 * and places of bolts, height and diameter of the screw, heights of the nose) values are tried, the
 * ends of its range among them: it matters if the pairing fits with everything at best, and one of
 * the values tried does not let it fit. A reading of which no value tried fails may still decide;
 * the only open reading of a pairing always does.
 *
 * <p><b>Together.</b> Where the pairing fits with everything at best, but no reading matters by
 * itself, all its open readings are returned as {@link org.jawroom.advice.tape.Decides#TOGETHER}.
 * Where it does not fit even at best, none is: no reading can make it fit.
 *
 * <p><b>Settles.</b> A reading settles a pairing if it matters and there is a value with which the
 * pairing fits whatever the others are, or it is the pairing's only open reading.
 *
 * <p><b>How closely.</b> A limit counts on the tolerance of the reading's row; a tape that reads
 * worse than that makes it void. Where the reading has a range with two ends, an eighth of its
 * width is asked for, too: what is read to ± t leaves open true values within t of the limit, so
 * that at most a quarter of the range stays open. The reading must be within the lesser of the two;
 * of a tolerance 0 (not given) only the range counts.
 */
package org.jawroom.advice.tape;
