/**
 * What would make a pairing fit, in words: single changes, each with what to watch for, and what
 * the shop has that serves instead.
 */
package org.jawroom.report.wording.remedy;
