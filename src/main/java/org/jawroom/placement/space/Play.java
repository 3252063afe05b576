package org.jawroom.placement.space;

/**
 * How far the vise can go straight each way from its position with margin ≥ 0 all the way and its
 * bolts still in the slots reported; half-nanometres, 0 or more.
 */
public record Play(long left, long right, long front, long rear) {}
