/**
 * Compares two runs.
 *
 * <p>Both sides are sorted by pairing in bounded memory and merge-joined; the changes are sorted
 * once more, worst first. A difference below 0.001 mm does not count.
 */
package org.jawroom.report.compare;
