/** The workbook of a shop, one class per sheet, with every pairing. */
package org.jawroom.report.matrix;
