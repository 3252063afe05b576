/**
 * What a run reads: the tables, with their faults printed, or the report of an earlier run; names
 * as they can be printed, and the unit that people read.
 */
package org.jawroom.app.input;
