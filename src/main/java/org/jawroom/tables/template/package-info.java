/**
 * Empty tables to fill in, as a workbook or a folder of CSV files.
 *
 * <p>{@link org.jawroom.tables.template.Template} writes them from {@link
 * org.jawroom.tables.schema.TableSpec}, so that headings, drop-downs and comments are those that
 * the reader knows. The worked rows in them have names that begin with {@link
 * org.jawroom.tables.schema.TableSpec#WORKED}; the reader skips them. The workbook's legend sheet
 * bears sketches with every dimension named by its column; they are drawn, never computed with.
 *
 * <p><b>Promised:</b> the same program writes the same bytes on the same machine (fonts, and with
 * them the sketches, may differ between machines), and a file appears whole or not at all.
 */
package org.jawroom.tables.template;
