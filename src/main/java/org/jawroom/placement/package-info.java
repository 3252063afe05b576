/**
 * Where a vise can be bolted, the best place for it, and the verdict on a pairing; for a whole shop
 * {@link org.jawroom.placement.ShopPairings}.
 *
 * <p>Rooms, each knowing those before it: {@code space}, {@code bolting}, {@code search}, {@code
 * opening}, {@code pairing}, {@code job}.
 *
 * <p><b>Pure.</b> No files, no clock, no shared state, no libraries: the same inputs give the same
 * outcome on any thread.
 *
 * <p><b>Exact.</b> Positions lie on the lattice of half-nanometres. Since every bound is a whole
 * number of them, a placement with margin ≥ t exists on the lattice exactly if one exists at all.
 */
package org.jawroom.placement;
