package org.jawroom.report;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.advice.BlankLimit;
import org.jawroom.advice.Explanation;
import org.jawroom.advice.Remedy;
import org.jawroom.advice.RemedyKind;
import org.jawroom.clearance.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.Alternative;
import org.jawroom.placement.Miss;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Play;
import org.jawroom.placement.Recommendation;
import org.jawroom.placement.Roomiest;
import org.jawroom.placement.SideBySide;
import org.jawroom.placement.Verdict;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Side;
import org.jawroom.shop.Vise;

/** One pairing explained for a terminal of 80 columns. */
public final class ExplanationText {
  private static final int COLUMNS = 80;
  private static final long LEAST_PLAY = 2 * Length.MM;

  private final PeopleUnit unit;
  private final Explanation explanation;
  private final Outcome outcome;
  private final Machine machine;
  private final Vise vise;
  private final WhereWords where;
  private final List<String> lines = new ArrayList<>();

  private ExplanationText(PeopleUnit unit, Explanation explanation) {
    this.unit = unit;
    this.explanation = explanation;
    this.outcome = explanation.advice().outcome();
    this.machine = outcome.machine();
    this.vise = outcome.vise();
    this.where = new WhereWords(unit, machine, vise);
  }

  /**
   * The lines, without line ends.
   *
   * @param onMachine the outcomes of every vise on the machine, {@code ofVise} of the vise on every machine:
   *     what else would serve is told from them
   */
  public static List<String> lines(
      PeopleUnit unit, Explanation explanation, List<Outcome> onMachine, List<Outcome> ofVise) {
    ExplanationText text = new ExplanationText(unit, explanation);
    text.verdict();
    text.outcome.recommended().ifPresent(text::placement);
    text.pairs();
    text.others();
    text.misses();
    text.remedies(onMachine, ofVise);
    text.limits();
    text.cautions();
    return text.lines.stream().map(PlainText::forTerminal).toList();
  }

  private void verdict() {
    add(machine.name() + " x " + vise.name());
    add(sentence());
    outcome.bestMargin().ifPresent(
        best -> add("Best margin over the full opening: " + figure(best) + " " + unit.word()
            + " (rounded toward less)."));
    if (outcome.verdict() == Verdict.LIMITED) {
      add("Usable opening: " + new Words(unit).opening(outcome) + ".");
    }
    for (String mark : new Words(unit).marks(outcome)) {
      add("! " + mark);
    }
  }

  private String sentence() {
    return switch (outcome.verdict()) {
      case FITS -> outcome.bestMargin().isPresent()
          ? "It fits: nothing listed is hit, jaws closed to fully open (bare vise, no tool or part)."
          : "Nothing is listed that it could hit. Look before you trust it.";
      case MEASURE -> "Too close to call: it fits only if your readings are better than you said. Measure"
          + " again.";
      case LIMITED -> "It fits over part of its opening only.";
      case NO_PLACE -> outcome.recommended().isPresent()
          ? "No place: bolts line up, but it hits something everywhere."
          : "No place, whatever the blank dimensions are.";
      case NO_MOUNT -> "Its bolts do not line up with this table's slots.";
      case UNKNOWN -> "Unknown: not measured: " + Words.columns(outcome.missing()) + ".";
    };
  }

  private void placement(Recommendation place) {
    heading("Recommended place (tape to the nearest, " + unit.word() + ")");
    new TapeWords(unit, machine, vise).of(place).forEach(this::item);
    place.play().ifPresent(this::play);
    place.overhang().ifPresent(
        over -> {
          if (over > 0) {
            item("its base hangs " + unit.brief(over, Rounding.UP) + " over a table edge");
          }
        });
    explanation.reachShort().ifPresent(
        sides -> {
          for (Side side : Side.values()) {
            if (sides.get(side) > 0) {
              item("the spindle does not reach the last " + unit.brief(sides.get(side), Rounding.UP)
                  + " of the work area at its " + side.word());
            }
          }
        });
    place.noseNotBelow().ifPresent(
        nose -> item("spindle nose not below " + unit.brief(nose, Rounding.UP) + " above the table"));
    explanation.roomiest().ifPresent(this::roomiest);
    explanation.advice().sideBySide().map(SideBySide::count).filter(count -> count > 1)
        .ifPresent(count -> item(count + " of them stand side by side on the same slots"));
  }

  private void play(Play play) {
    item("play with the bolts in those slots: left " + figure(play.left()) + ", right "
        + figure(play.right()) + ", front " + figure(play.front()) + ", rear " + figure(play.rear()));
    if (play.left() + play.right() < LEAST_PLAY || play.front() + play.rear() < LEAST_PLAY) {
      item("under 2 mm of play in all: nobody can tap it square there");
    }
  }

  private void roomiest(Roomiest place) {
    item("roomiest place: handle to the " + place.handleTo().word() + ", "
        + figure(Math.abs(place.x() - outcome.recommended().get().x())) + " along x and "
        + figure(Math.abs(place.y() - outcome.recommended().get().y())) + " along y from there, margin "
        + margin(place));
  }

  private void pairs() {
    if (explanation.pairs().isEmpty()) {
      return;
    }
    heading("Every guard and part at that place, tightest first (" + unit.word() + ")");
    item("margin = gap - required - tolerance");
    Interval openings = outcome.recommended().get().openings();
    // The bolts of a mount are several boxes of one name; as far as they say the same, once is enough.
    explanation.pairs().stream().map(limit -> pair(limit, openings)).distinct().forEach(this::item);
  }

  private String pair(Limit limit, Interval openings) {
    return figure(limit.margin()) + " = " + figure(limit.gap()) + " - "
        + unit.fine(limit.required(), Rounding.UP) + " - " + unit.fine(limit.tolerance(), Rounding.UP)
        + "  " + limit.guard() + " · " + limit.part() + ": " + where.of(limit, openings);
  }

  private void others() {
    if (explanation.others().isEmpty()) {
      return;
    }
    heading("Other turns and mounts");
    for (Alternative other : explanation.others()) {
      String shortfall = other.reachShortfall() > 0
          ? ", reach short by " + unit.brief(other.reachShortfall(), Rounding.UP)
          : "";
      item("handle to the " + other.turn().word() + ", " + other.mount() + ": margin "
          + margin(other.best()) + shortfall);
    }
  }

  private void misses() {
    List<Miss> misses = explanation.misses();
    if (misses.isEmpty()) {
      return;
    }
    heading(outcome.verdict() == Verdict.NO_MOUNT ? "Nearest misses" : "Where it does not hold");
    misses.forEach(miss -> item(MissWords.of(unit, miss)));
  }

  private void remedies(List<Outcome> onMachine, List<Outcome> ofVise) {
    if (outcome.verdict() == Verdict.FITS) {
      return;
    }
    RemedyWords words = new RemedyWords(unit);
    boolean settled = outcome.verdict() != Verdict.UNKNOWN;
    heading(settled ? "What one change would make it fit, least effort first" : "What would serve instead");
    if (outcome.verdict() == Verdict.LIMITED) {
      item("without any change: " + words.keepOpen(outcome));
    }
    explanation.advice().toleranceNeeded().map(words::known).filter(known -> !known.isEmpty())
        .ifPresent(known -> item("without any change: measure more closely, " + known));
    List<Remedy> remedies = explanation.advice().remedies();
    for (Remedy remedy : remedies) {
      if (remedy.kind() != RemedyKind.CLEARANCE) {
        item(remedied(words, remedy));
      }
    }
    if (settled && remedies.stream().allMatch(remedy -> remedy.kind() == RemedyKind.CLEARANCE)) {
      item("no single change does it");
    }
    item("another vise of ours that fits here: " + Elsewhere.vises(onMachine, unit));
    item("a machine of ours where this vise fits: " + Elsewhere.machines(ofVise, unit));
    for (Remedy remedy : remedies) {
      if (remedy.kind() == RemedyKind.CLEARANCE) {
        add("");
        item(remedied(words, remedy));
      }
    }
  }

  private String remedied(RemedyWords words, Remedy remedy) {
    String mind = words.mind(outcome, remedy);
    return words.change(machine, remedy) + (mind.isEmpty() ? "" : " (" + mind + ")");
  }

  private void limits() {
    if (explanation.advice().limits().isEmpty()) {
      return;
    }
    heading("What the blanks would have to be");
    explanation.advice().limits().forEach(limit -> item(limit(limit)));
  }

  private String limit(BlankLimit limit) {
    String column = limit.guard().isEmpty() ? limit.column().column() : "gap of " + limit.guard();
    // With other blanks open, a limit says only what is needed, not what is enough.
    String fits = outcome.missing().size() == 1 ? "fits" : "can fit";
    return switch (limit.relation()) {
      case AT_LEAST -> fits + " if " + column + " ≥ " + unit.fine(limit.limit().getAsLong(), Rounding.UP);
      case AT_MOST -> fits + " if " + column + " ≤ " + unit.fine(limit.limit().getAsLong(), Rounding.DOWN);
      case ALWAYS -> fits + " whatever " + column + " is";
      case NEVER -> "cannot fit whatever " + column + " is";
    };
  }

  private void cautions() {
    add("");
    add("This does not replace the check on the machine. Lock out before reaching in. Local codes and the"
        + " machine maker's instructions come first.");
  }

  private String margin(Roomiest place) {
    return place.limit().map(limit -> figure(limit.margin()) + " (" + Words.limit(limit) + ")")
        .orElse("not limited by anything listed");
  }

  private String figure(long length) {
    return unit.fine(length, Rounding.DOWN);
  }

  private void heading(String text) {
    lines.add("");
    add(text);
  }

  private void item(String text) {
    lines.addAll(WrappedLines.wrapped(text, 2, 4, COLUMNS));
  }

  private void add(String text) {
    lines.addAll(WrappedLines.wrapped(text, 0, 2, COLUMNS));
  }
}
