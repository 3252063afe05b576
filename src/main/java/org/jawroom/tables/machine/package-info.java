/** Reads machines and what stands round them: rows of {@code machines} and {@code guards}. */
package org.jawroom.tables.machine;
