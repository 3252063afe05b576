/**
 * Counts over the pairings of a block, each added as it is solved; those of a shop are the sum over
 * its blocks.
 */
package org.jawroom.report.tally;
