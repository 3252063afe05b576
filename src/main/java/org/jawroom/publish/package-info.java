/**
 * Publishes files atomically: together, complete, or not at all.
 *
 * <p><b>In:</b> names and contents, each with the {@link org.jawroom.publish.ReportKind} that it
 * may replace. <b>Promised:</b> inputs and files of any other kind are never replaced; a killed run
 * leaves every file complete, and the next run into the folder completes the set and deletes the
 * remnants; a second run waits. Does not know the content of a file.
 */
package org.jawroom.publish;
