/**
 * The commands, one class each: parse the options, run, print results.
 *
 * <p><b>Exit status.</b> 0 done, whatever the verdicts; 1 the inputs were refused, every fault
 * listed and nothing written; 2 wrong use of the command; 3 a file could not be read or written, or
 * not all could be printed; 70 a bug of jawroom's, with a stack trace.
 *
 * <p>Results go to standard output, everything else to standard error, both as UTF-8; {@link
 * org.jawroom.launch.StandardStream} keeps the reason if one could not be written, and {@link
 * org.jawroom.launch.Main} checks both at the end of every run. A pipe closed by its reader ends a
 * run with status 3 without a message. Progress is shown on a terminal only. {@code NO_COLOR} is
 * respected.
 */
package org.jawroom.cli.command;
