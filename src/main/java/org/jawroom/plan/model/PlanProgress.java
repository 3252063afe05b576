package org.jawroom.plan.model;

/**
 * The beginning of a step.
 *
 * @param step from 1
 * @param steps upper bound on the number of steps for this aim
 */
public record PlanProgress(Aim aim, int step, int steps) {}
