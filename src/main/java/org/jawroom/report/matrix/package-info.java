/** The workbook of a shop: a sheet a class, of every pairing or, of a large shop, an overview. */
package org.jawroom.report.matrix;
