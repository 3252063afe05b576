package org.jawroom.advice;

import java.util.OptionalLong;

/**
 * How closely a pairing that is too close to call would have to be known to fit.
 *
 * @param machine the greatest tolerance of the machine's own guards with which it fits, the vise's
 *     as it is; half-nanometres, a whole multiple of 0.01 mm rounded down; empty if even 0 does not
 *     serve
 * @param vise the greatest tolerance of the vise, the machine's as it is; empty likewise
 */
public record ToleranceNeeded(OptionalLong machine, OptionalLong vise) {}
