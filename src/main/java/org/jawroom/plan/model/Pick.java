package org.jawroom.plan.model;

/** One kind of vise on one machine, as indices into the lists of {@link CellModel}, from 0. */
public record Pick(int machine, int vise) {}
