/**
 * What a file or sheet comes to, whatever its format: a grid of cells with their kinds and looks,
 * the budget of cells, faults with their place, and the tables gathered from one input.
 */
package org.jawroom.tables.source.grid;
