/**
 * The fewest sets that together hold every element (minimum set cover), in whole numbers.
 *
 * <p><b>In:</b> a number of elements, counted from 0, and sets of them. <b>Out:</b> a {@link
 * org.jawroom.plan.cover.Cover}: sets that hold every element that any set holds, and how many are
 * needed at least. Both numbers are the same if the cover is proven to be smallest. The problem is
 * NP-hard (R. M. Karp, "Reducibility among combinatorial problems", 1972), so that the search ends
 * after a fixed amount of work; the gap that is then left is stated, never hidden.
 *
 * <p>Pure: the same input gives the same cover. Of equals the set that comes first is taken.
 */
package org.jawroom.plan.cover;
