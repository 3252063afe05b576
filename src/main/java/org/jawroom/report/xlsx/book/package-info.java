/**
 * Workbooks as files: bytes that depend on the content alone, and temporary files in the run's own
 * folder. Does not know what is in the sheets.
 */
package org.jawroom.report.xlsx.book;
