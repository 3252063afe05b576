/** A plan as CSV, workbook and text, and {@code plan.csv} read back. */
package org.jawroom.report.plan;
