/**
 * The tables, their columns, and what a person should put into each.
 *
 * <p>The single source for the reader, the templates and the handbook. {@link
 * org.jawroom.tables.schema.TableSpec} has the tables in the order in which faults are listed, each
 * with its {@link org.jawroom.tables.schema.ColumnSpec}s in the order of the specification. The
 * table of settings has two columns; {@link org.jawroom.tables.schema.SettingColumns} lists what
 * its rows may hold.
 *
 * <p><b>Blank is never zero.</b> A column either must be filled, or is unknown when blank, or has
 * the default that {@link org.jawroom.tables.schema.ColumnSpec#blankMeans} describes. {@code none}
 * states that the thing is absent, only where {@link
 * org.jawroom.tables.schema.ColumnSpec#noneAllowed}.
 */
package org.jawroom.tables.schema;
