package org.jawroom.report.card.statement;

import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.value.Provenance;

/**
 * The tables that a card was made from, their checksum and the dates of measurement: a card with
 * another checksum is out of date.
 */
public final class Origin {

  /** As many digits of the checksum as people compare by eye. */
  private static final int FINGERPRINT = 12;

  private Origin() {}

  public static List<Item> items(Outcome outcome, RunFacts run) {
    return List.of(
        new Item("Machine measured:", when(outcome.machine().provenance())),
        new Item("Vise measured:", when(outcome.vise().provenance())),
        files(run));
  }

  /** The tables and their checksums. */
  public static Item files(RunFacts run) {
    return new Item(
        "Tables (SHA-256):",
        run.files().stream()
                .map(
                    file ->
                        file.name()
                            + " "
                            + file.fingerprint()
                                .substring(0, Math.min(FINGERPRINT, file.fingerprint().length())))
                .collect(Collectors.joining(", "))
            + "; jawroom "
            + run.toolVersion());
  }

  private static String when(Provenance provenance) {
    String measured = provenance.measured().isBlank() ? "nobody said when" : provenance.measured();
    return measured + (provenance.source().isBlank() ? "" : " (" + provenance.source() + ")");
  }
}
