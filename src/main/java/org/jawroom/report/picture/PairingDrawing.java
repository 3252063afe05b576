package org.jawroom.report.picture;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.drawing.PairingPicture;
import org.jawroom.drawing.file.Picture;
import org.jawroom.drawing.view.Caption;
import org.jawroom.drawing.view.Neighbour;
import org.jawroom.drawing.view.Tape;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.wording.place.TapeMeasure;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;

/** The picture of a pairing at its recommended place, with its captions. */
public final class PairingDrawing {
  /** The caution that every drawing bears. */
  public static final String CAUTION =
      "Does not replace the check on the machine. Lock out before reaching in. Local codes and the"
          + " machine maker's instructions come first.";

  private final PeopleUnit unit;
  private final Settings settings;
  private final Outcome outcome;
  private final Recommendation place;

  private PairingDrawing(
      PeopleUnit unit, Settings settings, Outcome outcome, Recommendation place) {
    this.unit = unit;
    this.settings = settings;
    this.outcome = outcome;
    this.place = place;
  }

  /**
   * The whole picture with its title block.
   *
   * @param outcome with a place
   * @param layout of that place
   */
  public static Picture of(PeopleUnit unit, Settings settings, Outcome outcome, Layout layout) {
    return of(unit, settings, outcome, layout, List.of());
  }

  /**
   * The same of a vise where it stands.
   *
   * @param standing with a place
   */
  public static Picture of(PeopleUnit unit, Settings settings, StandingOutcome standing) {
    return of(
        unit,
        settings,
        standing.placed().orElseThrow(),
        standing.there().orElseThrow().layout(),
        beside(standing.others()));
  }

  private static Picture of(
      PeopleUnit unit, Settings settings, Outcome outcome, Layout layout, List<Neighbour> beside) {
    Recommendation place = outcome.recommended().orElseThrow();
    Caption caption = new PairingDrawing(unit, settings, outcome, place).caption();
    return PairingPicture.titled(outcome.machine(), layout, beside, place.limit(), caption);
  }

  /** Vises where they stand, as a drawing of another shows them; not those off the slots. */
  public static List<Neighbour> beside(List<StandingOutcome> others) {
    List<Neighbour> beside = new ArrayList<>();
    for (StandingOutcome other : others) {
      other
          .there()
          .ifPresent(
              there -> beside.add(new Neighbour(there.layout(), other.standing().vise().name())));
    }
    return beside;
  }

  /**
   * The views alone with the two tape measures as dimension lines, for a card that prints the text
   * itself.
   *
   * @param outcome with a place
   * @param layout of that place
   * @param figures the two tape measures as the card has them, along x first
   * @param beside of further vises on the table
   */
  public static Picture bare(
      PeopleUnit unit,
      Settings settings,
      Outcome outcome,
      Layout layout,
      List<String> figures,
      List<Neighbour> beside,
      double width,
      double height) {
    Recommendation place = outcome.recommended().orElseThrow();
    Caption caption = new PairingDrawing(unit, settings, outcome, place).caption();
    return PairingPicture.onCard(
        outcome.machine(),
        layout,
        beside,
        place.limit(),
        caption,
        tapes(unit, outcome, place, figures),
        width,
        height);
  }

  private static List<Tape> tapes(
      PeopleUnit unit, Outcome outcome, Recommendation place, List<String> figures) {
    Machine machine = outcome.machine();
    boolean upright = place.handleTo().uAxis() == Axis.Y;
    List<TapeMeasure> measures =
        new TapeWords(unit, machine, outcome.vise())
            .measures(place.handleTo(), place.x(), place.y());
    List<Tape> tapes = new ArrayList<>();
    for (int i = 0; i < measures.size(); i++) {
      TapeMeasure measure = measures.get(i);
      boolean left = measure.edge() == Side.LEFT;
      long edge = -(left ? machine.tableLength() : machine.tableWidth()) / 2;
      tapes.add(
          new Tape(
              left ? Axis.X : Axis.Y,
              edge,
              edge + measure.distance(),
              left != upright,
              figures.get(i)));
    }
    return tapes;
  }

  private Caption caption() {
    return new Caption(
        outcome.vise().name() + " on " + outcome.machine().name(),
        lines(),
        place.limit().map(this::measure).orElse(""),
        place.limit().map(this::measureName).orElse(""),
        unit.word(),
        unit.length(),
        CAUTION);
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(Words.signed(Finding.of(outcome)));
    CaveatWords caveats = new CaveatWords(unit);
    caveats.of(outcome).forEach(caveat -> lines.add("! " + caveat));
    if (!caveats.hand(outcome).isEmpty()) {
      lines.add("! " + caveats.hand(outcome));
    }
    CaveatWords.checked(outcome).ifPresent(lines::add);
    if (outcome.verdict() == Verdict.LIMITED) {
      lines.add(new Words(unit).opening(outcome) + "; drawn over that range");
    }
    place.limit().ifPresent(limit -> lines.add(margin(limit)));
    lines.add(asked());
    lines.addAll(new TapeWords(unit, outcome.machine(), outcome.vise()).of(place));
    if (place.reachShortfall() > 0) {
      lines.add(
          "! spindle misses " + unit.brief(place.reachShortfall(), Rounding.UP) + " of the work");
    }
    return lines;
  }

  private String margin(Limit limit) {
    return limit.margin() >= 0
        ? "margin "
            + unit.fine(limit.margin(), Rounding.DOWN)
            + " "
            + unit.word()
            + " beyond all that is asked"
        : "short by "
            + unit.fine(-limit.margin(), Rounding.UP)
            + " "
            + unit.word()
            + ", all that is asked included";
  }

  private String asked() {
    return "clearance asked: "
        + unit.fine(settings.clearance(), Rounding.UP)
        + " "
        + unit.word()
        + place
            .limit()
            .map(
                limit ->
                    "; here "
                        + unit.fine(limit.required(), Rounding.UP)
                        + " and "
                        + unit.fine(limit.tolerance(), Rounding.UP)
                        + " for tolerances")
            .orElse("");
  }

  private String measure(Limit limit) {
    return limit.gap() >= 0
        ? "gap " + unit.fine(limit.gap(), Rounding.DOWN)
        : "overlap " + unit.fine(-limit.gap(), Rounding.UP);
  }

  private String measureName(Limit limit) {
    return WhereWords.pair(limit)
        + "; "
        + unit.fine(limit.required() + limit.tolerance(), Rounding.UP)
        + " asked";
  }
}
