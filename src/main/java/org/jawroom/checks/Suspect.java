package org.jawroom.checks;

import org.jawroom.checks.exact.ValueRange;
import org.jawroom.shop.value.Measurand;

/**
 * A reading that may be wrong.
 *
 * @param written what the tables say
 * @param mustBe what it must be to explain the checks, half-nanometres
 * @param explains how many checks disagree without it, the other suspects of its set taken as such
 */
public record Suspect(Measurand reading, ValueRange written, ValueRange mustBe, int explains) {}
