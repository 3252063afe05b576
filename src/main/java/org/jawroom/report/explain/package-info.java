/**
 * The full explanation of one pairing, of a job on it, of a set, or of a vise where it stands, as
 * text for a terminal, brief or whole.
 */
package org.jawroom.report.explain;
