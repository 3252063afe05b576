/**
 * Files into grids of cells: a folder of CSV files, or one XLSX workbook.
 *
 * <p>A {@link org.jawroom.tables.source.Grid} has one header row and rows of cells, each with its
 * number as people see it in the file. What a cell means is not asked here. A file that cannot be
 * read at all is an {@link org.jawroom.tables.source.UnreadableInput}; whatever else is wrong is a
 * {@link org.jawroom.tables.source.Fault} in the list handed over, and reading goes on.
 */
package org.jawroom.tables.source;
