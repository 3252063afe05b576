package org.jawroom.clearance;

import org.jawroom.geometry.Box;

/**
 * What a guard sweeps in one situation, in the table frame.
 *
 * @param rank its place in the order of guards, by which equal margins are told apart
 * @param table whether it is the table itself, which is held against few parts only
 * @param clearance required by the guard itself or by the setting
 */
public record SweptGuard(
    String name,
    int rank,
    boolean table,
    Situation situation,
    Box box,
    long clearance,
    long tolerance) {}
