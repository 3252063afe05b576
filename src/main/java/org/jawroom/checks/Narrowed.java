package org.jawroom.checks;

import org.jawroom.checks.exact.ValueRange;
import org.jawroom.shop.value.Measurand;

/**
 * An open reading of which checks that agree leave less than its range.
 *
 * @param was its range as written, half-nanometres
 * @param now what is left of it, the other readings anywhere within theirs
 */
public record Narrowed(Measurand reading, ValueRange was, ValueRange now) {}
