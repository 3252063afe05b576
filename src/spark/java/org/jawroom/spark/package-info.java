/**
 * The solver in Apache Spark, for a catalogue that outgrows one machine. The tables are sent to
 * every executor as they stand, and read there once; pairings, machines then vises in input order,
 * are cut into slices, of which each is a task and a part of every report. The parts in the order
 * of their names, joined, are byte for byte the reports of one machine. Spark repeats the slices of
 * a failed task; only whole parts of finished tasks appear.
 */
package org.jawroom.spark;
