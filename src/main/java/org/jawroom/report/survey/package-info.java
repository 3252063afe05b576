/**
 * A survey of the pairings of a report, as lists on the terminal, as a workbook with native charts,
 * and its counts as CSV.
 *
 * <p>Terminal and workbook print the same lists ({@link org.jawroom.report.survey.Listing}); what
 * is counted, and how, says {@link org.jawroom.report.survey.count}. A list in a file has all
 * entries that fit.
 */
package org.jawroom.report.survey;
