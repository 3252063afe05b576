package org.jawroom.advice.assess;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.blank.Relation;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.value.Column;

/**
 * A question to the seller of a machine: one of its open readings, and the limits at which the
 * answer matters.
 *
 * @param changes the vises, then jobs, that depend on it and have a limit, in input order
 * @param open the names of those that depend on it without a limit that can be computed, likewise
 */
public record Question(OpenReading reading, List<Change> changes, List<String> open) {
  public Question {
    changes = List.copyOf(changes);
    open = List.copyOf(open);
  }

  public Column column() {
    return reading.column();
  }

  /** Whether nothing in the shop depends on it. */
  public boolean isIdle() {
    return changes.isEmpty() && open.isEmpty();
  }

  /**
   * A vise that fits, or a job that is held, only while the answer satisfies a limit.
   *
   * @param subject the name of the vise or the job
   * @param job whether it is a job
   * @param alone whether no other blank is involved; otherwise the limit is necessary but not
   *     sufficient
   * @param relation how the answer must relate to the limit
   * @param limit half-nanometres; empty for {@link Relation#ALWAYS}, for {@link Relation#NEVER} and
   *     for a load
   * @param sure the value that suffices with every other open reading at worst; empty if none does,
   *     for a job and for a load
   * @param kilograms the limit of a load
   */
  public record Change(
      String subject,
      boolean job,
      boolean alone,
      Relation relation,
      OptionalLong limit,
      OptionalLong sure,
      Optional<BigDecimal> kilograms) {}
}
