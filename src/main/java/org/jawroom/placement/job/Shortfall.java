package org.jawroom.placement.job;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * One thing that fails.
 *
 * @param by how much is missing, half-nanometres; empty where the reason has no amount, where a
 *     blank leaves it open, and for a load
 * @param kilograms how much too heavy; for a load only
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
