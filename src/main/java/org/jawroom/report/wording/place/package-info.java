/**
 * Places in words for a person at the machine: where a vise stands, by tape from the table's edges,
 * and where a part comes nearest to a guard. Lengths are in the chosen unit, rounded toward less
 * clearance.
 */
package org.jawroom.report.wording.place;
