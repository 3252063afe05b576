/**
 * The words for outcomes, the same in every report: verdicts, limits, places by tape, changes,
 * cautions.
 */
package org.jawroom.report.wording;
