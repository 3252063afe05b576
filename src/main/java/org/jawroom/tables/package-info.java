/**
 * A folder of CSV files or an XLSX workbook into a {@link org.jawroom.shop.Shop}: see {@link
 * org.jawroom.tables.ShopReader}.
 *
 * <p><b>On entry</b> anything: the input is typed by people. <b>On return</b> either a shop every
 * record of which holds what its constructor promises, or at least one {@link
 * org.jawroom.tables.source.Fault}, never both and never neither. Every fault is collected; one
 * fault hides another only where the second could not be told without guessing.
 *
 * <p><b>Blank is never zero.</b> A dimension that may be unknown stays blank. Defaults are those of
 * {@link org.jawroom.tables.schema}; those that bear on clearance are told as {@link
 * org.jawroom.tables.Note}s.
 *
 * <p>Knows nothing of solving. {@code schema} says which columns there are, {@code source} opens
 * files, {@code cell} reads one cell.
 */
package org.jawroom.tables;
