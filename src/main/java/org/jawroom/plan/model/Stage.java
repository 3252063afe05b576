package org.jawroom.plan.model;

/**
 * The value reached for one aim.
 *
 * @param value larger is better: pieces held, machines, lengths, vises; money spent and changes
 *     count as negative numbers; 0 for {@link Aim#ORDER}
 * @param proven whether no better value exists given the values of the earlier aims
 */
public record Stage(Aim aim, long value, boolean proven) {}
