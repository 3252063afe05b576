/**
 * The setup card: one printable page for each pairing that has a place, as a PDF.
 *
 * <p><b>In:</b> an {@link org.jawroom.advice.Explanation} whose verdict is {@code fits}, {@code
 * limited} or {@code measure}, the settings, and {@link org.jawroom.report.xlsx.RunFacts}. What to
 * say is {@link org.jawroom.report.card.CardFacts}, words and rounded figures only; how it lies on
 * the paper is {@code CardPage} and knows nothing of vises.
 *
 * <p><b>Rounding</b> as in {@link org.jawroom.report}: ranges to lay out are drawn in, the least
 * allowed gap, the least height of the nose and a shortest bolt are rounded up, a longest bolt and
 * a torque down; the gap to expect is widened to whole tenths.
 *
 * <p><b>Trade facts</b> (bolts, torques, indicator, pinch gaps, steps) are data with their source
 * beside them; what has none is called common practice.
 *
 * <p><b>Promised:</b> every card is exactly one page: type and, after it, names shrink until it is.
 * The fonts are embedded, the text can be searched, the drawing is vectors, and the same inputs
 * give the same bytes. A letter that neither the typeface nor a font of the machine has, or one
 * that would steer the text, is shown as a dot; see {@link org.jawroom.drawing.TextRun}.
 */
package org.jawroom.report.card;
