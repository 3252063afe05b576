package org.jawroom.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.shop.Column;

/**
 * What to ask the seller of a machine: one of its blanks, and from which value on the answer
 * changes.
 *
 * @param guard for {@link Column#GUARD_GAP} the guard whose gap it is; else empty
 * @param changes what hangs on it and has a limit, vises then jobs in input order
 * @param open the names of what hangs on it without a limit that can be told, likewise
 */
public record Question(Column column, String guard, List<Change> changes, List<String> open) {
  public Question {
    changes = List.copyOf(changes);
    open = List.copyOf(open);
  }

  /** Whether nothing in the shop hangs on it. */
  public boolean isIdle() {
    return changes.isEmpty() && open.isEmpty();
  }

  /**
   * A vise that fits, or a job that is held, only while the answer keeps to a limit.
   *
   * @param subject the vise's name, or the job's
   * @param job whether it is a job
   * @param alone whether no other blank stands in the way: else the limit is needed, but not enough
   * @param relation how the answer must stand to the limit
   * @param limit half-nanometres; empty for {@link Relation#ALWAYS}, {@link Relation#NEVER}, and
   *     for a load
   * @param kilograms of a load
   */
  public record Change(
      String subject,
      boolean job,
      boolean alone,
      Relation relation,
      OptionalLong limit,
      Optional<BigDecimal> kilograms) {}
}
