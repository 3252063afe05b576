package org.jawroom.report.card;

import java.util.Optional;

/**
 * One measure to lay out.
 *
 * @param what of the vise, {@code from} which edge it is taken
 * @param best as a figure with its sign in words, {@code 236} or {@code 12 beyond}
 * @param range {@code 210 to 262} or {@code no play}; empty where there is none to tell
 */
public record TapeRange(String what, String from, String best, Optional<String> range) {}
