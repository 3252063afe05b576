/**
 * Two runs against each other.
 *
 * <p>Both sides are sorted by pairing in bounded memory and joined; what moved is sorted once more,
 * worst first. A difference of less than 0.001 mm is none.
 */
package org.jawroom.report.compare;
