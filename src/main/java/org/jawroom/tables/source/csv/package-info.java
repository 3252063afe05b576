/** One CSV file into a grid: its delimiter, its bounds, and the characters refused. */
package org.jawroom.tables.source.csv;
