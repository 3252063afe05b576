/**
 * The setup card: two printable pages for each pairing that has a place, or for a job held, as a
 * PDF.
 *
 * <p><b>In:</b> {@link org.jawroom.report.card.statement.CardSubject}, a place with all that is
 * known of it, the settings, and {@link org.jawroom.report.xlsx.RunFacts}. {@link
 * org.jawroom.report.card.CardFacts} is the content, text and rounded figures only; {@code
 * CardPage} lays it out and does not know vises.
 *
 * <p><b>Rounding</b> as in {@link org.jawroom.report}: ranges to lay out shrink at both ends; the
 * least allowed gap, the least height of the nose and a shortest bolt are rounded up, a longest
 * bolt and a torque down; an expected gap is widened to whole tenths.
 *
 * <p><b>Trade facts</b> (bolts, torques, indicator, pinch gaps, steps) are data with their source
 * beside them; those without one are called common practice.
 *
 * <p><b>Promised:</b> every card is exactly two pages: the type size and, after it, names shrink
 * until it is. The fonts are embedded, the text is searchable, the drawing is vector graphics, and
 * the same inputs give the same bytes. A letter that neither the typeface nor a font of the machine
 * has, or that would control the text direction, appears as a dot; see {@link
 * org.jawroom.drawing.text.TextRun}.
 */
package org.jawroom.report.card;
