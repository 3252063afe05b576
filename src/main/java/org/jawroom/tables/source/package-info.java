/**
 * Reads files into grids of cells: a folder of CSV files, or one XLSX workbook.
 *
 * <p>A {@link org.jawroom.tables.source.grid.Grid} has one header row and rows of cells, each with
 * its number as shown in the file. This package does not interpret cells. A file that cannot be
 * read at all is an {@link org.jawroom.tables.source.grid.UnreadableInput}; anything else that is
 * wrong is a {@link org.jawroom.tables.source.grid.Fault} in the list passed in, and reading goes
 * on.
 */
package org.jawroom.tables.source;
