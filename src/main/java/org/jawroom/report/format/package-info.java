/**
 * Lengths, figures and text as reports write them: units, rounding toward less clearance, JSON,
 * line breaks, and text from tables made harmless. Knows nothing of pairings.
 */
package org.jawroom.report.format;
