package org.jawroom.report;

import static org.jawroom.report.Invented.mm;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.JawEnd;
import org.jawroom.clearance.Situation;
import org.jawroom.placement.Verdict;

/**
 * Rows for the tests of comparing, written short: millimetres as text, empty for a cell that is.
 */
final class ComparedRows {
  private ComparedRows() {}

  static PairingRow row(String machine, String vise, Verdict verdict, String best) {
    return row(machine, vise, verdict, best, best, "");
  }

  /** {@code usable} as {@code from-to}. */
  static PairingRow row(
      String machine, String vise, Verdict verdict, String best, String margin, String usable) {
    Optional<PairingRow.Limiting> limiting =
        margin.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new PairingRow.Limiting("door", "screw front", Situation.CUTTING, JawEnd.OPEN));
    String[] ends = usable.split("-");
    return new PairingRow(
        machine,
        vise,
        verdict,
        length(margin),
        length(best),
        limiting,
        usable.isEmpty()
            ? Optional.empty()
            : Optional.of(new PairingRow.Usable(mm(ends[0]), mm(ends[1]))),
        verdict == Verdict.UNKNOWN ? List.of("machines.rear_gap", "vises.base_width") : List.of());
  }

  static PairingRow limited(String best, String margin, String usable) {
    return row("M", "v", Verdict.LIMITED, best, margin, usable);
  }

  private static OptionalLong length(String text) {
    return text.isEmpty() ? OptionalLong.empty() : OptionalLong.of(mm(text));
  }
}
