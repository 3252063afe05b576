/**
 * Parts common to all workbooks: styles, lists, page setup, the sheets of inputs and cautions. The
 * files are written by {@link org.jawroom.report.xlsx.book}.
 */
package org.jawroom.report.xlsx;
