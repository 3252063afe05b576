/**
 * Parses the text of one cell into one value, or a message that says what would be right.
 *
 * <p><b>Lengths</b> become whole half-nanometres: the exact rational that is written is rounded to
 * a whole nanometre, halves toward +infinity, and doubled. <b>Masses</b> become exact kilograms.
 * Nothing passes through floating point.
 *
 * <p>Minus signs of every kind count as minus, spaces of every kind as spaces. Ambiguous text is
 * refused: a {@link org.jawroom.tables.cell.BadCell} names the readings, and how to write each.
 */
package org.jawroom.tables.cell;
