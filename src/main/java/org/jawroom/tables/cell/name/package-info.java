/**
 * Names in cells: what a name may hold, when two are the same, which one somebody probably meant,
 * and invisible characters, which are refused.
 */
package org.jawroom.tables.cell.name;
