/** Counts over all pairings, kept as they come. */
package org.jawroom.report.tally;
