package org.jawroom.report.tally;

import java.math.BigDecimal;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.advice.Advice;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** The number of vises of one kind that stand side by side on a table. */
public final class PerTable {
  private PerTable() {}

  /** 0 if not even one fits or if the number is unknown. */
  public static int count(Advice pairing) {
    return pairing.sideBySide().map(SideBySide::count).orElse(0);
  }

  /** Their positions along the slots. */
  public static String positions(Advice pairing, String between, Function<Long, String> figure) {
    return pairing
        .sideBySide()
        .map(row -> row.positions().stream().map(figure).collect(Collectors.joining(between)))
        .orElse("");
  }

  /** The largest number of one kind on one table: {@code 6 × plain 125}. */
  public static String most(Tally ofMachine) {
    return ofMachine.most().map(PerTable::words).orElse("none");
  }

  private static String words(Advice pairing) {
    String many = count(pairing) + " × " + pairing.outcome().vise().name();
    return tooHeavy(pairing) ? many + " (too heavy together)" : many;
  }

  /** Whether so many bare vises exceed what the table carries. */
  public static boolean tooHeavy(Advice pairing) {
    Machine machine = pairing.outcome().machine();
    Vise vise = pairing.outcome().vise();
    return machine
        .maxLoad()
        .flatMap(
            load ->
                vise.mass()
                    .map(
                        mass ->
                            mass.multiply(BigDecimal.valueOf(count(pairing))).compareTo(load) > 0))
        .orElse(false);
  }
}
