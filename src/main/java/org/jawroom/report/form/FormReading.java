package org.jawroom.report.form;

/**
 * One reading that a form asks for.
 *
 * @param column the column of the table that takes it
 * @param question what to measure, and what not
 * @param noneAllowed whether the thing may be absent, which is written {@code none}
 */
public record FormReading(String column, String question, boolean noneAllowed) {}
