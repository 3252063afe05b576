/**
 * Explanations for programs: JSON objects (RFC 8259) of a pairing, a job on it, a set, and a vise
 * where it stands. Keys are always in the same order, lengths in mm to 0.001, rounded toward less
 * clearance.
 */
package org.jawroom.report.explain.json;
