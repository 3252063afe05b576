/**
 * Which lengths, masses and forces are refused because no machine, vise or shop has them: they come
 * from a wrong unit or a misread thousands separator. Lengths in half-nanometres; both ends of each
 * range are allowed.
 */
package org.jawroom.tables.row.size;
