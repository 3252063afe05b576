package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.TapSquare;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TapeFigure;

/** Tapping the vise square: the pivot, the indicator, the lever and the swing. */
public record TapFacts(PeopleUnit unit, CardSubject subject) {

  /** A reading to compute the lever for: 0.1 mm or 0.01 in. */
  private static final long MM_READING = Length.MM / 10;

  private static final long INCH_READING = Length.INCH / 100;

  public List<Item> items() {
    TapSquare tap = subject.tap();
    List<Item> items = new ArrayList<>();
    String what = subject.place().fastening().clamped() ? "strap's stud" : "bolt";
    items.add(new Item("Pivot:", "snug the " + what + " " + at(tap) + "; leave the others loose."));
    String zero = end(tap, tap.zeroLow());
    String far = end(tap, !tap.zeroLow());
    items.add(
        new Item(
            "Indicator:",
            "zero at the " + zero + " end of the jaw, sweep to the " + far + " end."));
    long reading = unit == PeopleUnit.MM ? MM_READING : INCH_READING;
    items.add(
        new Item(
            "Lever:",
            "for each "
                + unit.fine(reading, Rounding.NEAREST)
                + " it shows there, tap the "
                + far
                + " end back "
                + unit.fine(reading * tap.lever() / tap.jawWidth(), Rounding.NEAREST)
                + "; set zero again and sweep."));
    items.add(
        new Item(
            "Swing:",
            subject
                .outcome()
                .vise()
                .swivel()
                .map(
                    swivel ->
                        "not computed with the jaws square: see "
                            + swivel.of()
                            + ", and tap it where nothing is near.")
                .orElseGet(() -> swing(tap, far))));
    return items;
  }

  private String swing(TapSquare tap, String far) {
    if (unit.rounded(tap.swing(), Rounding.DOWN) == 0) {
      return "none to spare: it is as close as it may come before it is turned.";
    }
    return tap.nothingNear()
        ? "nothing listed comes near while it is tapped."
        : "the "
            + far
            + " end may go "
            + unit.brief(tap.swing(), Rounding.DOWN)
            + " either way before anything listed comes within its clearance"
            + (subject.others().isEmpty() ? "." : "; the vises beside it are not counted.");
  }

  private String at(TapSquare tap) {
    TapeFigure tape = new TapeFigure(unit);
    return tape.text(tap.at().x() + subject.machine().tableLength() / 2, Rounding.NEAREST)
        + " from the table's left edge, "
        + tape.text(tap.at().y() + subject.machine().tableWidth() / 2, Rounding.NEAREST)
        + " from its front edge";
  }

  private static String end(TapSquare tap, boolean low) {
    return tap.jaw() == Axis.X ? (low ? "left" : "right") : (low ? "front" : "rear");
  }
}
