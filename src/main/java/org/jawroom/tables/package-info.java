/**
 * Parses a folder of CSV files or an XLSX workbook into a {@link org.jawroom.shop.Shop}: see {@link
 * org.jawroom.tables.ShopReader}.
 *
 * <p><b>On entry</b> anything: the input is typed by people. <b>On return</b> either a shop in
 * which every record holds what its constructor promises, or at least one {@link
 * org.jawroom.tables.source.grid.Fault}, never both and never neither. Every fault is collected;
 * one fault hides another only if the second could not be determined without guessing.
 *
 * <p><b>Blank is never zero.</b> A dimension that may be unknown stays blank. Defaults are those of
 * {@link org.jawroom.tables.schema}; those that affect clearance are reported as {@link
 * org.jawroom.tables.row.Note}s.
 *
 * <p>Does not know solving. {@code schema} defines the columns, {@code source} opens files, {@code
 * cell} parses one cell.
 */
package org.jawroom.tables;
