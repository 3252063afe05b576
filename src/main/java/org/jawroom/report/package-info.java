/**
 * The outputs: {@code pairings.csv}, {@code remedies.csv}, {@code unknowns.csv} and, where there
 * are jobs, {@code jobs.csv} for programs, {@code matrix.xlsx} for people, and the closing lines on
 * the terminal.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop}, one {@link org.jawroom.advice.Advice} (or {@link
 * org.jawroom.placement.pairing.Outcome}) for each pairing (machines, then vises, in input order)
 * and {@link org.jawroom.report.xlsx.RunFacts}; one {@link org.jawroom.placement.job.JobOutcome}
 * for each job and pairing (jobs, machines, vises). This package computes nothing but roundings,
 * counts, the ranking of outcomes, and which columns a margin comes from.
 *
 * <p><b>Rounding</b> starts from exact half-nanometres, never from a rounded figure, and goes
 * toward less clearance. Rounded down: margins, play, room and the load that the table still
 * carries. Rounded up: shortfall, overhang, required clearance, tolerance, the nose's height, the
 * amount missing and the amount of a change. An opening range shrinks at both ends; places x and y
 * round to the nearest, halves up; a limit of a blank rounds to its safe side. The CSV has
 * millimetres to 0.001; people see millimetres to 0.1 or inches to 0.01 (ten times finer for
 * amounts to set by). Workbook cells hold the rounded number, so that no number format can show
 * more digits.
 *
 * <p><b>Text from tables</b> never becomes a formula: the CSV neutralises every character that a
 * spreadsheet would start a formula with, the workbook stores it as text.
 *
 * <p><b>Promised:</b> the same input gives the same bytes at any time and in any locale or time
 * zone. Files appear under their names only once all of them are complete.
 *
 * <p><b>Comparing</b> reads {@code pairings.csv} back ({@link org.jawroom.report.rows.PairingRows})
 * and compares two runs by the figures in that file, so that a difference below 0.001 mm does not
 * count. A survey reads the same file.
 *
 * <p>This package does not know how a placement was found.
 */
package org.jawroom.report;
