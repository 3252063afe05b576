/**
 * The tables, their columns, and what a person should put into each.
 *
 * <p>One source for everything that must know it: the reader, the templates and the page
 * inputs/README.md. {@link org.jawroom.tables.schema.TableSpec} lists the tables in the order in
 * which faults are listed, each with its {@link org.jawroom.tables.schema.ColumnSpec}s in the order
 * of the page. The settings have a table of two columns; what may stand in it is listed by {@link
 * org.jawroom.tables.schema.SettingColumns}.
 *
 * <p><b>Blank is never zero.</b> A column either must be filled, or is unknown when blank, or has
 * the default that {@link org.jawroom.tables.schema.ColumnSpec#blankMeans} describes. {@code none}
 * states that the thing is absent, only where {@link
 * org.jawroom.tables.schema.ColumnSpec#noneAllowed}.
 */
package org.jawroom.tables.schema;
