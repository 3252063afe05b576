/**
 * Files that appear together, whole, or not at all.
 *
 * <p><b>In:</b> names and contents, each with the {@link org.jawroom.publish.ReportKind} that it
 * may replace. <b>Promised:</b> inputs and files of any other kind are never replaced; a killed run
 * leaves every file whole, and the next run into the folder completes the set and removes what was
 * left; a second run waits. Knows nothing of what is in a file.
 */
package org.jawroom.publish;
