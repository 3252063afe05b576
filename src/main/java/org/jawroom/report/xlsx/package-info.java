/**
 * Parts common to all workbooks: styles, lists, page setup, the sheets of inputs and cautions; and
 * workbooks whose bytes depend on their content alone.
 */
package org.jawroom.report.xlsx;
