/**
 * What limits the pairings: how often each part meets each guard, with the margins there, counted
 * once for the workbook of a shop and for a survey of any size. Native charts of a workbook stand
 * here, too.
 */
package org.jawroom.report.limits;
