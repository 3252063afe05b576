/**
 * Published tables, one class per table, each with its source or marked "from memory, no source
 * seen": T-slots, T-nuts, holes, bolts, washers, torques, keys, safety gaps.
 *
 * <p>Lengths are half-nanometres unless a component says otherwise. This package does not depend on
 * shops.
 */
package org.jawroom.standards;
