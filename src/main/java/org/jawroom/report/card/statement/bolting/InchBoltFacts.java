package org.jawroom.report.card.statement.bolting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TapeFigure;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.standards.InchStock;
import org.jawroom.standards.InchThread;

/**
 * Inch studs in place of the metric bolts for which holes and clearances are computed. Only a
 * thread that is not thicker stands in ({@link InchThread#standInFor}); a thicker one is named as
 * not covered.
 *
 * @param d of the computed bolt
 * @param slot width of the slot
 * @param bolts how many
 */
record InchBoltFacts(long d, long slot, int bolts) {
  private static final PeopleUnit INCH = PeopleUnit.INCH;

  /**
   * The hardware.
   *
   * @param grip thickness of the flange under the nut; empty if blank
   * @param tolerance of the flange
   */
  List<Item> items(OptionalLong grip, long tolerance) {
    List<Item> items = new ArrayList<>();
    items.add(new Item("Inch studs:", studs()));
    Optional<InchThread> stud = InchThread.standInFor(d);
    if (stud.isPresent() && grip.isPresent()) {
      items.add(new Item("Stud length:", length(stud.get(), grip.getAsLong(), tolerance)));
    }
    return items;
  }

  /** The studs of straps, whose length depends on the blocks. */
  Item studsOnly() {
    return new Item("Inch studs:", studs());
  }

  private String studs() {
    String metric = ThreadWords.of(d);
    return InchThread.standInFor(d)
            .map(
                stud ->
                    "instead, "
                        + bolts
                        + " × "
                        + stud.name()
                        + " (grade 5) in nuts for slots "
                        + INCH.fineText(slot, Rounding.NEAREST)
                        + " wide: the thickest coarse thread not above "
                        + metric
                        + "; "
                        + stud.startingTorque()
                        + " lbf ft at most, to start with (SAE J429, else as for the bolts).")
            .orElse("none stands in for " + metric + ": the thinnest is thicker.")
        + notCovered(metric);
  }

  private String notCovered(String metric) {
    List<InchThread> thicker = InchThread.notCoveredBy(d, slot);
    return thicker.isEmpty()
        ? ""
        : " NOT "
            + thicker.stream().map(InchThread::name).collect(Collectors.joining(" or "))
            + ", which the slot takes: thicker than "
            + metric
            + ", so neither holes nor clearances are computed for it.";
  }

  /**
   * The stud's length, with t the depth of the T-nut's top below the table, G the flange, e its
   * tolerance, w the washer and D the stud. It stands in the T-nut by D, and above the flange are
   * washer and a nut of height D, but no more than the 2d of the computed bolt: t + G + e + w + 2D
   * ≤ length ≤ t + G − e + 2d + D.
   */
  private String length(InchThread stud, long grip, long tolerance) {
    long least = grip + tolerance + stud.washerThickness() + 2 * stud.diameter();
    long most = grip - tolerance + 2 * d + stud.diameter();
    if (least > most) {
      return "the flange is known to ± "
          + INCH.brief(tolerance, Rounding.UP)
          + " only: measure it before you order.";
    }
    List<String> stock = new ArrayList<>();
    for (long length : InchStock.STUDS) {
      long lo = INCH.rounded(Math.max(0, length - most), Rounding.UP);
      long hi = INCH.rounded(Math.min(slot, length - least), Rounding.DOWN);
      if (lo <= hi) {
        stock.add(
            new TapeFigure(INCH).text(length, Rounding.NEAREST)
                + " for t "
                + INCH.brief(lo, Rounding.NEAREST)
                + " to "
                + INCH.brief(hi, Rounding.NEAREST));
      }
    }
    return "t + "
        + INCH.brief(least, Rounding.UP)
        + " to t + "
        + INCH.brief(most, Rounding.DOWN)
        + " in all, "
        + new TapeFigure(INCH).text(stud.diameter(), Rounding.NEAREST)
        + " or more of it in the T-nut"
        + (stock.isEmpty() ? ": cut to length." : ": " + String.join(", ", stock) + ".");
  }
}
