package org.jawroom.advice;

import java.util.OptionalLong;

/**
 * The accuracy at which a pairing with the verdict {@code measure} fits.
 *
 * @param machine the greatest tolerance of the machine's own guards at which it fits, with the
 *     vise's tolerance unchanged; half-nanometres, a whole multiple of 0.01 mm rounded down; empty
 *     if even 0 does not serve
 * @param vise the greatest tolerance of the vise, with the machine's unchanged; empty likewise
 */
public record ToleranceNeeded(OptionalLong machine, OptionalLong vise) {}
