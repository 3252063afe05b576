/**
 * Vises where they stand now: {@code standing.csv}, the sheet <i>Standing</i>, and one of them in
 * words.
 */
package org.jawroom.report.standing;
