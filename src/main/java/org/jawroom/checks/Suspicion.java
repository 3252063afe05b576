package org.jawroom.checks;

import java.util.List;
import java.util.Optional;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.Unknown;
import org.jawroom.shop.value.Measurand;

/**
 * What may be wrong where checks that share quantities disagree with the tables.
 *
 * @param choices every set of readings of the least size that explains all of them together, each
 *     in the order of the tables; empty if no set of at most {@link #LARGEST} does
 * @param tellsApart if several sets remain, the reading that measured by itself separates most of
 *     them
 */
public record Suspicion(
    List<ExpectedGap> checks, List<List<Suspect>> choices, Optional<Measurand> tellsApart) {

  /** The largest sets of wrong readings that are looked for. */
  public static final int LARGEST = 3;

  public Suspicion {
    checks = List.copyOf(checks);
    choices = choices.stream().map(List::copyOf).toList();
  }

  /** Every reading that the checks meet: those that disagree or, where each agrees alone, all. */
  List<Measurand> met() {
    List<ExpectedGap> disagreeing =
        checks.stream().filter(check -> check.says() != ExpectedGap.Agreement.AGREES).toList();
    return (disagreeing.isEmpty() ? checks : disagreeing)
        .stream()
            .flatMap(check -> check.form().terms().keySet().stream())
            .filter(Unknown.ReadingValue.class::isInstance)
            .map(unknown -> ((Unknown.ReadingValue) unknown).measurand())
            .distinct()
            .toList();
  }

  /** Every reading of every choice, without duplicates. */
  public List<Measurand> readings() {
    return choices.stream()
        .flatMap(choice -> choice.stream().map(Suspect::reading))
        .distinct()
        .toList();
  }
}
