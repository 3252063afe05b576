package org.jawroom.plan;

/**
 * How far one aim was brought.
 *
 * @param value more is better: the quantity of jobs held, machines, length, vises; what is spent
 *     and the changes count below zero; {@link Long#MAX_VALUE} for a margin where nothing listed
 *     can be hit; 0 for {@link Aim#ORDER}
 * @param proven whether no better value exists beside the values of the aims before it
 */
public record Stage(Aim aim, long value, boolean proven) {}
