/**
 * One workbook into grids, read by events: its parts and their bounds, shared texts, styles, number
 * formats and merged cells.
 */
package org.jawroom.tables.source.sheet;
