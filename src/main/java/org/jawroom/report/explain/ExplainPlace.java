package org.jawroom.report.explain;

import org.jawroom.advice.Explanation;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.space.Play;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.TapeWords;
import org.jawroom.report.wording.WhereWords;
import org.jawroom.report.wording.Words;
import org.jawroom.shop.Side;
import org.jawroom.shop.Sides;

/** The section that describes where the vise stands and what the place offers. */
record ExplainPlace(PeopleUnit unit, Explanation explanation) {

  /** With less play than this along an axis nobody can tap a vise square. */
  private static final long LEAST_PLAY = 2 * Length.MM;

  void to(ExplainLines lines) {
    Outcome outcome = explanation.advice().outcome();
    if (outcome.recommended().isEmpty()) {
      return;
    }
    Recommendation place = outcome.recommended().get();
    TapeWords tape = new TapeWords(unit, outcome.machine(), outcome.vise());
    lines.heading(heading(outcome));
    lines.item(grain(unit));
    tape.of(place).forEach(lines::item);
    place.play().ifPresent(play -> play(unit, play, lines));
    place.overhang().stream()
        .filter(over -> over > 0)
        .forEach(
            over ->
                lines.item(
                    "its base hangs " + unit.brief(over, Rounding.UP) + " over a table edge"));
    explanation.reachShort().ifPresent(sides -> reach(sides, lines));
    place
        .noseNotBelow()
        .ifPresent(
            nose ->
                lines.item(
                    "keep the spindle nose "
                        + unit.brief(nose, Rounding.UP)
                        + " or more above the table"));
    explanation.roomiest().ifPresent(roomiest -> lines.item(roomiest(roomiest, place, tape)));
    explanation
        .advice()
        .sideBySide()
        .map(SideBySide::count)
        .filter(count -> count > 1)
        .ifPresent(
            count -> lines.item(count + " of them can stand side by side on the same slots"));
  }

  /** The step to which the place is rounded. */
  static String grain(PeopleUnit unit) {
    String finest = unit == PeopleUnit.MM ? "0.1" : "0.01";
    return "("
        + unit.word()
        + "; tape measures to the nearest "
        + finest
        + ", all else rounded toward less room)";
  }

  private String heading(Outcome outcome) {
    return switch (outcome.verdict()) {
      case FITS, AWKWARD -> "Where to bolt it";
      case LIMITED -> "Where to bolt it; " + new Words(unit).opening(outcome);
      case MEASURE -> "Where it comes nearest to fitting: measure again before you bolt it there";
      case NO_PLACE, NO_MOUNT, UNKNOWN ->
          "Where it comes nearest to fitting; it does NOT fit there";
    };
  }

  /** How far the vise can move from there. */
  static void play(PeopleUnit unit, Play play, ExplainLines lines) {
    lines.item(
        "from there it can go "
            + unit.brief(play.left(), Rounding.DOWN)
            + " left, "
            + unit.brief(play.right(), Rounding.DOWN)
            + " right, "
            + unit.brief(play.front(), Rounding.DOWN)
            + " to the front, "
            + unit.brief(play.rear(), Rounding.DOWN)
            + " to the rear, in the same slots");
    tooLittle("left to right", play.left() + play.right(), lines);
    tooLittle("front to rear", play.front() + play.rear(), lines);
  }

  private static void tooLittle(String way, long play, ExplainLines lines) {
    if (play < LEAST_PLAY) {
      lines.item("! under 2 mm of play in all " + way + ": nobody can tap it square there");
    }
  }

  private void reach(Sides<Long> sides, ExplainLines lines) {
    for (Side side : Side.values()) {
      if (sides.get(side) > 0) {
        lines.item(
            "! the spindle does not reach the last "
                + unit.brief(sides.get(side), Rounding.UP)
                + " between the jaws "
                + (side == Side.FRONT || side == Side.REAR ? "at the " : "on the ")
                + side.word());
      }
    }
  }

  /** The order of preference gives up margin only for the spindle's reach. */
  private String roomiest(Roomiest roomiest, Recommendation place, TapeWords tape) {
    Outcome outcome = explanation.advice().outcome();
    WhereWords where = new WhereWords(unit, outcome.machine(), outcome.vise());
    String margin =
        roomiest
            .limit()
            .map(
                limit ->
                    "margin " + figure(limit.margin()) + " (" + words(limit, where, place) + ")")
            .orElse("nothing listed can be hit");
    return "roomiest place, where the spindle reaches less of the work: handle to the "
        + roomiest.handleTo().word()
        + ", mount: "
        + roomiest.mount()
        + ", "
        + String.join(", ", tape.edges(roomiest.handleTo(), roomiest.x(), roomiest.y()))
        + "; "
        + margin;
  }

  private static String words(Limit limit, WhereWords where, Recommendation place) {
    return WhereWords.pair(limit) + ": " + where.of(limit, place.openings());
  }

  private String figure(long length) {
    return unit.brief(length, Rounding.DOWN);
  }
}
