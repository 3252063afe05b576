package org.jawroom.placement.job;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * One requirement of a job that fails.
 *
 * @param by the missing length, half-nanometres; empty if the reason has no amount, if a blank
 *     leaves it open, and for a load
 * @param kilograms the excess mass; for a load only
 */
public record Shortfall(JobReason reason, OptionalLong by, Optional<BigDecimal> kilograms) {

  static Shortfall of(JobReason reason) {
    return new Shortfall(reason, OptionalLong.empty(), Optional.empty());
  }

  static Shortfall of(JobReason reason, long by) {
    return new Shortfall(reason, OptionalLong.of(by), Optional.empty());
  }

  static Shortfall ofLoad(BigDecimal kilograms) {
    return new Shortfall(JobReason.LOAD, OptionalLong.empty(), Optional.of(kilograms));
  }
}
