/** The full explanation of one pairing, as text for a terminal of 80 columns or as JSON. */
package org.jawroom.report.explain;
