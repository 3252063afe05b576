/**
 * One row of a table: typed getters for its cells, faults collected in the ledger, the bounds
 * outside which a size or amount is refused, and what rows of one table may not share. What is read
 * is in half-nanometres, whatever unit it was written in.
 */
package org.jawroom.tables.row;
