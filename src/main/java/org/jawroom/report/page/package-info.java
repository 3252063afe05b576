/**
 * One self-contained HTML file of a whole shop: the matrix to click in, and a drawing of each
 * pairing in which the reader moves vise, table and jaws.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop}, one {@link org.jawroom.report.page.PagePairing}
 * for each pairing (machines, then vises, in input order) and {@link
 * org.jawroom.report.xlsx.RunFacts}. <b>Out:</b> a file that opens from disk, fetches nothing and
 * runs one script, whose SHA-256 hash its Content-Security-Policy names.
 *
 * <p><b>Numbers.</b> The data are whole half-nanometres, at most 2·10^11, which JavaScript numbers
 * hold exactly. The page computes the gaps at one moment as {@link
 * org.jawroom.clearance.gap.MomentGaps} does, and rounds only what it shows, toward less. Verdicts,
 * margins and words are those of the other reports.
 *
 * <p><b>Names</b> come from users' files: they are data in a JSON block, which nothing in them can
 * end, and enter the page as text only.
 *
 * <p><b>Promised:</b> the same input gives the same bytes.
 */
package org.jawroom.report.page;
