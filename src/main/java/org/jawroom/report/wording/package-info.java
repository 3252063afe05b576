/** The words for outcomes, the same in every report: verdicts, open readings, jobs, cautions. */
package org.jawroom.report.wording;
