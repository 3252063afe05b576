package org.jawroom.report.card;

import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Provenance;

/**
 * Which tables a card was made from, and when they were measured: another fingerprint, another
 * card.
 */
final class Origin {

  /** As many letters of a fingerprint as people compare by eye. */
  private static final int FINGERPRINT = 12;

  private Origin() {}

  static List<Item> items(Outcome outcome, RunFacts run) {
    return List.of(
        new Item("Machine measured:", when(outcome.machine().provenance())),
        new Item("Vise measured:", when(outcome.vise().provenance())),
        new Item(
            "Tables (SHA-256):",
            run.files().stream()
                    .map(
                        file ->
                            file.name()
                                + " "
                                + file.fingerprint()
                                    .substring(
                                        0, Math.min(FINGERPRINT, file.fingerprint().length())))
                    .collect(Collectors.joining(", "))
                + "; jawroom "
                + run.toolVersion()));
  }

  private static String when(Provenance provenance) {
    String measured = provenance.measured().isBlank() ? "nobody said when" : provenance.measured();
    return measured + (provenance.source().isBlank() ? "" : " (" + provenance.source() + ")");
  }
}
