/**
 * The values that machines and vises are made of: lengths that may be open ({@link
 * org.jawroom.shop.value.Dimension}), when a thing counts, where a reading comes from, and the
 * names of the columns.
 *
 * <p><b>Unit.</b> Lengths are half-nanometres ({@link org.jawroom.geometry.Length}). {@link
 * org.jawroom.shop.value.Require} holds the checks that all records share; each throws {@link
 * IllegalArgumentException}.
 */
package org.jawroom.shop.value;
