package org.jawroom.report.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.clearance.JawEnd;
import org.jawroom.clearance.Limit;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Play;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Column;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Provenance;
import org.jawroom.shop.Vise;
import org.jawroom.shop.VisePart;
import org.jawroom.shop.When;

/** Outcomes in words, lengths in the chosen unit. */
public record Words(PeopleUnit unit) {

  /** The prefix of reasons that give a usable part of the opening. */
  public static final String KEEP_OPEN = "keep open ";

  private static final String HANDLE_OFF = "handle must be off";

  /** With less play than this along an axis nobody can tap a vise square. */
  private static final long LEAST_PLAY = 2 * Length.MM;

  /** What limits: {@code rear cover · screw rear, closed}. */
  public static String limit(Limit limit) {
    return limit(limit.guard().name(), limit.part().name(), limit.situation(), limit.opening());
  }

  public static String limit(String guard, String part, Situation situation, JawEnd opening) {
    StringBuilder words = new StringBuilder(guard).append(" · ").append(part);
    if (opening != JawEnd.ANY) {
      words.append(", ").append(opening.word());
    }
    if (situation == Situation.LOADING) {
      words.append(", loading");
    }
    return words.toString();
  }

  /** The verdict as a sentence. */
  public String sentence(Outcome outcome) {
    return switch (outcome.verdict()) {
      case FITS ->
          outcome.bestMargin().isPresent()
              ? "It fits: nothing listed is hit, jaws closed to fully open (bare vise, no tool or part)."
              : "Nothing is listed that it could hit. Look before you trust it.";
      case AWKWARD ->
          "Awkward: nothing listed is hit, but the handle leaves less room than a hand wants.";
      case MEASURE ->
          "Too close to call: it fits only if your readings are better than you said. Measure"
              + " again.";
      case LIMITED ->
          "It fits over part of its opening only: " + opening(outcome) + " " + unit.word() + ".";
      case NO_PLACE ->
          outcome.recommended().isPresent()
              ? "No place: bolts line up, but it hits something or comes too near wherever it stands."
              : "No place, whatever the blank dimensions are.";
      case NO_MOUNT ->
          "No mount: no bolts of it line up with this table's slots in any turn allowed.";
      case UNKNOWN -> "Unknown: not measured: " + columns(outcome.missing()) + ".";
    };
  }

  /**
   * The text under a pairing's margin, or in place of it: what limits the pairing or why it has no
   * margin.
   */
  public String reason(Outcome outcome) {
    String limit =
        outcome.recommended().flatMap(Recommendation::limit).map(Words::limit).orElse("");
    return switch (outcome.verdict()) {
      case FITS ->
          outcome.bestMargin().isEmpty() ? Finding.NOTHING_LISTED.brief() : clear(outcome, limit);
      case AWKWARD -> joined("\n", Finding.AWKWARD.brief(), limit);
      case LIMITED -> joined("\n", opening(outcome), limit);
      case MEASURE -> joined("\n", Finding.MEASURE.words(), limit);
      case NO_PLACE ->
          outcome.recommended().isPresent() ? limit : "no place even with every blank at its best";
      case NO_MOUNT -> Finding.NO_MOUNT.words();
      case UNKNOWN -> "unknown: " + columns(outcome.missing());
    };
  }

  private String clear(Outcome outcome, String limit) {
    return Finding.placedForReach(outcome) ? placedMargin(outcome) + " as placed: " + limit : limit;
  }

  private String placedMargin(Outcome outcome) {
    long margin = outcome.recommended().flatMap(Recommendation::limit).orElseThrow().margin();
    return unit.text(margin, Rounding.DOWN);
  }

  /** {@code keep open 76.2 to 152.4}, rounded inward to the displayed digits. */
  public String opening(Outcome outcome) {
    return outcome.usableOpening().map(open -> KEEP_OPEN + range(open)).orElse("");
  }

  /** Both ends, rounded inward. */
  private String range(Interval open) {
    return unit.brief(open.lo(), Rounding.UP) + " to " + unit.brief(open.hi(), Rounding.DOWN);
  }

  /** Further remarks about a pairing; for one without a place only those on weight and room. */
  public List<String> marks(Outcome outcome) {
    List<String> marks = new ArrayList<>();
    if (outcome.loadLeft().filter(left -> left.signum() < 0).isPresent()) {
      marks.add("too heavy");
    }
    if (outcome.roomOverJaws().isPresent() && outcome.roomOverJaws().getAsLong() <= 0) {
      marks.add("no room over the jaws");
    }
    if (!Finding.hasPlace(outcome)) {
      return marks;
    }
    if (outcome.shortestToolTooShort()) {
      marks.add("shortest tool does not clear the bed");
    }
    if (handleComesOff(outcome.vise())) {
      marks.add(HANDLE_OFF);
    }
    outcome.recommended().ifPresent(place -> addPlaceMarks(place, marks));
    return marks;
  }

  private void addPlaceMarks(Recommendation place, List<String> marks) {
    place
        .play()
        .map(Words::tooLittlePlay)
        .filter(axes -> !axes.isEmpty())
        .ifPresent(axes -> marks.add("play under 2 mm in " + axes));
    if (place.reachShortfall() > 0) {
      marks.add("reach short by " + unit.brief(place.reachShortfall(), Rounding.UP));
    }
  }

  private static String tooLittlePlay(Play play) {
    String x = play.left() + play.right() < LEAST_PLAY ? "x" : "";
    String y = play.front() + play.rear() < LEAST_PLAY ? "y" : "";
    return joined(" and ", x, y);
  }

  /** Whether the margin requires that the handle is taken off before cutting. */
  private static boolean handleComesOff(Vise vise) {
    return (vise.simple() && !vise.handle().radius().isNone() && !vise.handle().onWhileCutting())
        || vise.parts().stream()
            .anyMatch(part -> part.name().equals(VisePart.HANDLE) && part.when() == When.LOADING);
  }

  /** Blank columns; the table's name is left out where it is obvious. */
  public static String columns(List<Column> missing) {
    return missing.stream()
        .map(column -> column == Column.GUARD_GAP ? "gap of a guard" : column.column())
        .collect(Collectors.joining(", "));
  }

  /** {@code table 900 × 300, travel 600 × 400}. */
  public String table(Machine machine) {
    return "table "
        + by(machine.tableLength(), machine.tableWidth())
        + ", travel "
        + by(machine.travelX(), machine.travelY());
  }

  private String by(long x, long y) {
    return unit.brief(x, Rounding.DOWN) + " × " + unit.brief(y, Rounding.DOWN);
  }

  /** {@code jaw 150, opens 0 to 150}. */
  public String jaws(Vise vise) {
    return "jaw "
        + unit.brief(vise.jaws().width(), Rounding.DOWN)
        + ", opens "
        + range(vise.opening());
  }

  /** The text under a vise's name at the head of its column. */
  public String heading(Vise vise) {
    return joined("\n", jaws(vise).replace(", opens", "\nopens"), exact(vise.provenance()));
  }

  /**
   * Remarks that apply to all pairings of a machine: guards not looked for, measuring tolerance.
   */
  public static String caution(Machine machine) {
    return joined("\n", LookedFor.words(machine), exact(machine.provenance()));
  }

  /** Remarks that apply to all pairings of a vise. */
  public static String caution(Vise vise) {
    return joined("; ", handleComesOff(vise) ? HANDLE_OFF : "", exact(vise.provenance()));
  }

  private static String exact(Provenance provenance) {
    return provenance.assumedExact() ? "tolerance taken as 0" : "";
  }

  /** The finding with its sign. */
  public static String signed(Finding finding) {
    return finding.sign() + " " + finding.words();
  }

  private static String joined(String between, String first, String second) {
    return first.isEmpty() || second.isEmpty() ? first + second : first + between + second;
  }
}
