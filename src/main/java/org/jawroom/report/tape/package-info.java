/** What to tape first, in words and as {@code tape.csv}, which is filled in and read back. */
package org.jawroom.report.tape;
