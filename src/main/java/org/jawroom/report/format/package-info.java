/**
 * Lengths, figures and text as reports write them: units, rounding toward less clearance, JSON,
 * line breaks, and sanitised text from tables. Does not know pairings.
 */
package org.jawroom.report.format;
