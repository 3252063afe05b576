/**
 * The commands: reading what was asked, showing progress, saying what was done.
 *
 * <p><b>Exit status.</b> 0 done, whatever the verdicts; 1 the inputs were refused, every fault
 * listed and nothing written; 2 wrong use of the command; 3 a file could not be read or written, or
 * not all could be printed; 70 a bug of jawroom's, with a stack trace.
 *
 * <p>Results go to standard output, everything else to standard error, both as UTF-8; {@link
 * org.jawroom.launch.StandardStream} keeps why one could not be written, and {@link
 * org.jawroom.launch.Main} looks at the end of every run. A pipe whose reader has left ends a run
 * with 3 and without a word. Progress is shown on a terminal only. {@code NO_COLOR} is respected.
 */
package org.jawroom.cli;
