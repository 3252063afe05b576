/**
 * Reads {@code pairings.csv} back, cell by cell, for reports of reports.
 *
 * <p>A file has any number of rows and is never held whole. Lengths are as the file has them, to
 * 0.001 mm; a blank one is empty, never zero. A fault names row and column.
 */
package org.jawroom.report.rows;
