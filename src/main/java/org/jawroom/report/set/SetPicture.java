package org.jawroom.report.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.drawing.PairingPicture;
import org.jawroom.drawing.file.Picture;
import org.jawroom.drawing.view.Caption;
import org.jawroom.drawing.view.Neighbour;
import org.jawroom.geometry.Length;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.picture.PairingDrawing;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.Settings;

/**
 * The picture of a set that fits: the vise with the least margin in full, with the gap that limits
 * it; the others beside it, numbered from the left (slots along y: from the front).
 */
public final class SetPicture {
  private final SetWords words;
  private final SetOutcome outcome;

  /** The index of the vise drawn in full. */
  private final int shown;

  private SetPicture(PeopleUnit unit, Settings settings, SetOutcome outcome) {
    this.words = new SetWords(unit, settings);
    this.outcome = outcome;
    int tightest = 0;
    for (int at = 1; at < outcome.stands().size(); at++) {
      if (margin(at) < margin(tightest)) {
        tightest = at;
      }
    }
    this.shown = tightest;
  }

  private long margin(int at) {
    return outcome.stands().get(at).place().margin().orElse(Length.ENDLESS);
  }

  /**
   * The whole picture with its title block.
   *
   * @param outcome a set that fits
   */
  public static Picture of(PeopleUnit unit, Settings settings, SetOutcome outcome) {
    SetPicture set = new SetPicture(unit, settings, outcome);
    return PairingPicture.titled(
        outcome.machine(), set.stand().there().layout(), set.beside(), set.limit(), set.caption());
  }

  /** The views alone, for a sheet that prints the text itself. */
  public static Picture bare(
      PeopleUnit unit, Settings settings, SetOutcome outcome, double width, double height) {
    SetPicture set = new SetPicture(unit, settings, outcome);
    return PairingPicture.onCard(
        outcome.machine(),
        set.stand().there().layout(),
        set.beside(),
        set.limit(),
        set.caption(),
        List.of(),
        width,
        height);
  }

  private SetOutcome.Stand stand() {
    return outcome.stands().get(shown);
  }

  private Optional<Limit> limit() {
    return stand().place().limit();
  }

  private List<Neighbour> beside() {
    List<Neighbour> beside = new ArrayList<>();
    for (int at = 0; at < outcome.stands().size(); at++) {
      if (at != shown) {
        beside.add(new Neighbour(outcome.stands().get(at).there().layout(), "no. " + (at + 1)));
      }
    }
    return beside;
  }

  private Caption caption() {
    PeopleUnit unit = words.unit();
    List<String> lines = new ArrayList<>();
    lines.add(words.signed(outcome));
    words.minds(outcome).forEach(mind -> lines.add("! " + mind));
    lines.addAll(words.lines(outcome));
    lines.add(
        "Drawn in full: no. "
            + (shown + 1)
            + ", the one with the least margin; the others with the jaws closed");
    return new Caption(
        outcome.set().name() + " on " + outcome.machine().name(),
        lines,
        limit().map(limit -> "gap " + unit.fine(limit.gap(), Rounding.DOWN)).orElse(""),
        limit()
            .map(
                limit ->
                    WhereWords.pair(limit)
                        + "; "
                        + unit.fine(limit.required() + limit.tolerance(), Rounding.UP)
                        + " asked")
            .orElse(""),
        unit.word(),
        unit.length(),
        PairingDrawing.CAUTION);
  }
}
