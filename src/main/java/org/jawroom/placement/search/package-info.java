/**
 * The best place among candidates, and what there is to report of a place: limits, shortfall, play,
 * nose height, how many stand side by side.
 *
 * <p>The order of preference stands in {@link org.jawroom.placement.search.BestPlace}; every
 * comparison is between whole half-nanometres, so the optimum is exact.
 */
package org.jawroom.placement.search;
