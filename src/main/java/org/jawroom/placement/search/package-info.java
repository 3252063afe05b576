/**
 * The best placement among candidates, and what reports show of a placement: limits, shortfall,
 * play, nose height, number side by side.
 *
 * <p>The order of preference is documented in {@link org.jawroom.placement.search.BestPlace}. Every
 * comparison is between whole half-nanometres, so the optimum is exact.
 */
package org.jawroom.placement.search;
