/** Candidates beside what the shop owns, as CSV, workbook and printable page. */
package org.jawroom.report.assess;
