package org.jawroom.plan;

/**
 * One kind of vise on one machine, both by their place in the {@link CellModel}'s lists, from 0.
 */
public record Pick(int machine, int vise) {}
