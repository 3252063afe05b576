package org.jawroom.tables.source.csv;

/**
 * A figure to fill into a table.
 *
 * @param line on which the row starts in its file, the first being 1
 * @param reading the column; of a guard or a mount with its name: {@code gap (sill)}
 * @param value as written; never blank
 */
public record FilledRow(int line, String table, String name, String reading, String value) {}
