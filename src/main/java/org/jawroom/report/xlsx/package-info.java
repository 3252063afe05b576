/**
 * Parts that every workbook has: styles, lists, paper, the sheets of inputs and cautions; and
 * workbooks whose bytes depend on their content alone.
 */
package org.jawroom.report.xlsx;
