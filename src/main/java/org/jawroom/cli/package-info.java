/**
 * The commands: reading what was asked, showing progress, saying what was done.
 *
 * <p><b>Exit status.</b> 0 done, whatever the verdicts; 1 the inputs were refused, every fault
 * listed and nothing written; 2 wrong use of the command; 3 a file could not be read or written; 70
 * a bug of jawroom's, with a stack trace.
 *
 * <p>Results go to standard output, everything else to standard error. Progress is shown on a
 * terminal only. {@code NO_COLOR} is respected.
 */
package org.jawroom.cli;
