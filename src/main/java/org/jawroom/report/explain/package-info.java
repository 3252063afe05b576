/** The full explanation of one pairing, as text for a terminal, brief or whole, or as JSON. */
package org.jawroom.report.explain;
