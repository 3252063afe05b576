package org.jawroom.report.compare;

import static org.jawroom.fixture.outcome.Invented.mm;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.rows.PairingRow;

/**
 * Rows for the tests of comparing, written short: millimetres as text, empty for a cell that is.
 */
public final class ComparedRows {
  private ComparedRows() {}

  public static PairingRow row(String machine, String vise, Verdict verdict, String best) {
    return row(machine, vise, verdict, best, best, "");
  }

  /** {@code usable} as {@code from-to}. */
  public static PairingRow row(
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
        Optional.empty(),
        verdict == Verdict.UNKNOWN ? List.of("machines.rear_gap", "vises.base_width") : List.of());
  }

  /** The same, with what the report says of tapping it square. */
  static PairingRow settable(PairingRow row, Optional<Boolean> settable) {
    return new PairingRow(
        row.machine(),
        row.vise(),
        row.verdict(),
        row.margin(),
        row.bestMargin(),
        row.limiting(),
        row.usable(),
        settable,
        row.missing());
  }

  public static PairingRow limited(String best, String margin, String usable) {
    return row("M", "v", Verdict.LIMITED, best, margin, usable);
  }

  /** As if read from a file, with so little memory that most goes through files. */
  public static ComparedSide side(List<PairingRow> rows) throws IOException {
    ComparedSide side = new ComparedSide(500);
    for (int i = 0; i < rows.size(); i++) {
      side.add(rows.get(i), i + 2);
    }
    return side;
  }

  public static Comparison comparison(List<PairingRow> old, List<PairingRow> now)
      throws IOException {
    return Comparison.of(side(old), side(now), 700);
  }

  /** What a comparison hands on, in that order. */
  public record Read(List<ComparedPair> pairs, List<PairingRow> only) {
    static Read of(Comparison comparison, Change wanted) throws IOException {
      Read read = new Read(new ArrayList<>(), new ArrayList<>());
      comparison.read(
          new Comparison.Reader() {
            @Override
            public void pair(Change change, ComparedPair pair) {
              if (change == wanted) {
                read.pairs.add(pair);
              }
            }

            @Override
            public void only(Change side, PairingRow pairing) {
              if (side == wanted) {
                read.only.add(pairing);
              }
            }
          });
      return read;
    }
  }

  private static OptionalLong length(String text) {
    return text.isEmpty() ? OptionalLong.empty() : OptionalLong.of(mm(text));
  }
}
