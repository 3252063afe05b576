/**
 * One run: reads the inputs, solves the pairings on threads, hands them to the reports in input
 * order, and shows progress.
 *
 * <p><b>In:</b> paths and settings as text. <b>Out:</b> outcomes and reports; the exit status that
 * goes with them ({@link org.jawroom.app.ExitStatus}). Knows no option of any command.
 */
package org.jawroom.app;
