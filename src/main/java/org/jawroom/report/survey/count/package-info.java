/**
 * What a survey counts: groups by any columns, quantiles, what limits, which vises serve, and what
 * moved between two reports, for files of a million rows.
 *
 * <p><b>In:</b> rows of {@code pairings.csv}, kept column by column ({@link
 * org.jawroom.report.survey.count.SurveyRows}): those that every survey needs and those asked for,
 * lengths exact, as whole half-nanometres. Columns and selections of rows are Tablesaw's, which
 * this room alone knows; its filters of numbers are not used, since they compare as doubles.
 * <b>Out:</b> a {@link org.jawroom.report.survey.count.Survey}.
 *
 * <p>A blank cell is no number: quantiles leave it out, and no order of lengths chooses it. A vise
 * is of use on a machine as a plan has it (fits, awkward or limited, not too heavy, room over its
 * jaws), and comfortable there if its margin is at least {@code comfort} and no reading is in
 * doubt.
 */
package org.jawroom.report.survey.count;
