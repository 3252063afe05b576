/**
 * Empty tables to fill in, as a workbook or a folder of CSV files.
 *
 * <p>{@link org.jawroom.tables.template.Template} generates them from {@link
 * org.jawroom.tables.schema.TableSpec}, so that headings, drop-down lists and comments match the
 * reader. The names of worked rows begin with {@link org.jawroom.tables.schema.TableSpec#WORKED};
 * the reader skips them. The workbook's legend sheet has sketches with every dimension named by its
 * column; they are illustrations only.
 *
 * <p><b>Promised:</b> the same program writes the same bytes on the same machine (fonts, and with
 * them the sketches, may differ between machines), and a file appears complete or not at all.
 */
package org.jawroom.tables.template;
