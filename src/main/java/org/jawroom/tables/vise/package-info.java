/** Reads vises: rows of {@code vises}, {@code vise_parts} and {@code mounts}. */
package org.jawroom.tables.vise;
