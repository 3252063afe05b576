/**
 * Published tables, one class a table, each with its source or marked "from memory, no source
 * seen": T-slots, T-nuts, holes, bolts, washers, torques, keys, safety gaps.
 *
 * <p>Lengths are half-nanometres unless a component says otherwise. Nothing here knows a shop.
 */
package org.jawroom.standards;
