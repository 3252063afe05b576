package org.jawroom.plan;

/**
 * A step that begins.
 *
 * @param step from 1
 * @param steps how many there are at most for this aim
 */
public record PlanProgress(Aim aim, int step, int steps) {}
