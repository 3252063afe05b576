/**
 * The workbook of a shop with too many pairings for a sheet that lists them all: counts, the matrix
 * in words, and the best pairings of each machine and vise.
 */
package org.jawroom.report.overview;
