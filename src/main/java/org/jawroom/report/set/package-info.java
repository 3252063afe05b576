/**
 * Sets of vises on one table: {@code sets.csv}, the sheet <i>Sets</i>, and a set on one machine in
 * words.
 */
package org.jawroom.report.set;
