/** Counts over all pairings, updated as pairings arrive. */
package org.jawroom.report.tally;
