/**
 * What a run reads: the tables, with their faults printed, names as they can be printed, and the
 * unit that people read.
 */
package org.jawroom.app.input;
