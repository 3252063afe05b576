/** The workbook of a shop, one class per sheet: every pairing or, for a large shop, an overview. */
package org.jawroom.report.matrix;
