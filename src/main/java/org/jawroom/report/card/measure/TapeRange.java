package org.jawroom.report.card.measure;

import java.util.Optional;

/**
 * One tape measurement for laying out.
 *
 * @param what the feature of the vise
 * @param from the edge it is measured from
 * @param best the figure with its sign in words, {@code 236} or {@code 12 beyond}
 * @param range {@code 210 to 262} or {@code no play}; empty if there is none
 */
public record TapeRange(String what, String from, String best, Optional<String> range) {}
