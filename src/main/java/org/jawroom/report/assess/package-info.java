/** Candidates beside what the shop owns, as CSV, workbook and page to print. */
package org.jawroom.report.assess;
