/**
 * One run: reads the inputs, solves the pairings on threads, passes them to the reports in input
 * order, and shows progress.
 *
 * <p><b>In:</b> paths and settings as text. <b>Out:</b> outcomes and reports, and the exit status
 * ({@link org.jawroom.app.ExitStatus}). Does not know the options of any command.
 */
package org.jawroom.app;
