/**
 * Figures written down on {@code tape.csv} go into copies of the tables they belong to.
 *
 * <p><b>In:</b> tables read without a fault and a file of rows {@code table, name, reading, value}.
 * <b>Out:</b> the files of a copy in which only the cells named differ, or faults. A value with no
 * unit is in millimetres, whatever the row's unit is, and is written with it. A value outside what
 * the tables know of the reading is a fault, and so is one for a reading that is known already. A
 * range goes into columns that take ranges; it lies within the bounds known.
 */
package org.jawroom.tables.fill;
