/**
 * What the tool writes: {@code pairings.csv}, {@code remedies.csv}, {@code unknowns.csv} and, where
 * there are jobs, {@code jobs.csv} for programs, {@code matrix.xlsx} for people, and the closing
 * lines on the terminal.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop}, one {@link org.jawroom.advice.Advice} (or {@link
 * org.jawroom.placement.pairing.Outcome}) for each pairing (machines, then vises, in input order)
 * and {@link org.jawroom.report.xlsx.RunFacts}; of jobs one {@link
 * org.jawroom.placement.job.JobOutcome} for each on each pairing (jobs, machines, vises). Nothing
 * is worked out here but roundings, counts, which of several outcomes is the better, and which
 * columns a margin comes from.
 *
 * <p><b>Rounding</b> is from exact half-nanometres, never from a rounded figure, and toward less
 * clearance: margins, play, room and what the table still carries down; shortfall, overhang,
 * required clearance, tolerance, the nose's height and what is missed by up; an opening is drawn in
 * at both ends; places x and y to the nearest, halves up; what to change by up; a limit of a blank
 * on its safe side. The CSV has millimetres to 0.001; people see millimetres to 0.1 or inches to
 * 0.01 (ten times as fine what they are to go by), and cells hold the rounded number, so that no
 * display of it can show more.
 *
 * <p><b>Text from tables</b> is never a formula: the CSV neutralises what a spreadsheet would start
 * a formula with, the workbook stores it as text.
 *
 * <p><b>Promised:</b> the same input gives the same bytes at any time and in any locale or time
 * zone. Files appear under their names only once all of them are complete.
 *
 * <p><b>Comparing</b> reads {@code pairings.csv} back ({@link
 * org.jawroom.report.compare.PairingRows}) and holds two runs against each other by what it tells,
 * so that a difference of less than 0.001 mm is none.
 *
 * <p>This package knows nothing of how a placement was found.
 */
package org.jawroom.report;
