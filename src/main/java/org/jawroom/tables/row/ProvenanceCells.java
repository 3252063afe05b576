package org.jawroom.tables.row;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Provenance;

/** Parses how accurately the numbers of a machine's or a vise's row are known. */
public final class ProvenanceCells {
  private ProvenanceCells() {}

  private static final Map<String, Long> STANDS_FOR =
      Map.of(
          "drawing", Length.MM / 2,
          "caliper", Length.MM / 2,
          "rule", Length.MM,
          "tape", 3 * Length.MM / 2,
          "brochure", 5 * Length.MM);

  /**
   * Tolerance takes precedence over source; with neither, 0 is assumed and noted.
   *
   * @param thing the row's machine or vise, for the note
   */
  public static Provenance read(Row row, String thing, Ledger ledger) {
    Optional<String> source = row.word("source");
    OptionalLong tolerance = row.length("tolerance");
    boolean given = !row.isBlank("tolerance") || !row.isBlank("source");
    if (!given) {
      ledger.tookDefault(row, thing + ": neither tolerance nor source, so tolerance taken as 0");
    }
    long value = tolerance.orElseGet(() -> source.map(STANDS_FOR::get).orElse(0L));
    return new Provenance(value, !given, source.orElse(""), row.text("measured"));
  }
}
