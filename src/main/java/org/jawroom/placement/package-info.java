/**
 * Where a vise can be bolted, its best placement, and the verdict on a pairing; for a whole shop
 * {@link org.jawroom.placement.ShopPairings}.
 *
 * <p>Sub-packages, each depending only on those before it: {@code space}, {@code bolting}, {@code
 * search}, {@code opening}, {@code pairing}, {@code job}.
 *
 * <p><b>Pure.</b> No files, no clock, no shared state, no libraries: equal inputs give equal
 * outcomes on any thread.
 *
 * <p><b>Exact.</b> Positions lie on the lattice of half-nanometres. Every bound is a whole number
 * of them, so a placement with margin ≥ t exists on the lattice exactly if one exists at all.
 */
package org.jawroom.placement;
