package org.jawroom.report.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.jawroom.standards.TNut;

/** Outcomes in words, lengths in the chosen unit. */
public record Words(PeopleUnit unit) {

  /** The prefix of reasons that give a usable part of the opening. */
  public static final String KEEP_OPEN = "keep open ";

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

  /** The verdict as a sentence that begins with its word. */
  public String sentence(Outcome outcome) {
    String caveats = String.join("; ", new CaveatWords(unit).of(outcome));
    String mind = caveats.isEmpty() ? "" : " Mind: " + caveats + ".";
    return switch (outcome.verdict()) {
      case FITS ->
          caveats.isEmpty()
              ? "Fits: nothing listed is hit, jaws closed to fully open (bare vise, no tool or"
                  + " part)."
              : "Fits, but mind: " + caveats + ".";
      case AWKWARD ->
          "Awkward: nothing listed is hit, but the "
              + new CaveatWords(unit).handInUnit(outcome)
              + ", less than a hand wants."
              + mind;
      case MEASURE ->
          "Measure: it fits only if the readings are better than stated"
              + outcome
                  .usableOpening()
                  .map(open -> "; as they are stated, only with the jaws " + open(open))
                  .orElse("")
              + "."
              + mind;
      case LIMITED ->
          "Limited: it fits only with the jaws "
              + outcome.usableOpening().map(this::open).orElseThrow()
              + "."
              + mind;
      case NO_PLACE ->
          (outcome.recommended().isPresent()
                  ? "No place: it can be held on this table, but hits something or comes too near"
                      + " wherever it stands."
                  : "No place, " + new OpenWords(unit).whatever(outcome.openReadings()) + ".")
              + mind;
      case NO_MOUNT ->
          "No mount: neither bolts nor clamps hold it on this table in any orientation allowed."
              + mind;
      case UNKNOWN -> "Unknown: " + undecided(outcome) + "." + mind;
    };
  }

  private static boolean hasRange(Outcome outcome) {
    return outcome.openReadings().stream().anyMatch(reading -> !reading.value().isBlank());
  }

  private String undecided(Outcome outcome) {
    return new OpenWords(unit).undecided(outcome.missing(), outcome.openReadings());
  }

  private String open(Interval open) {
    return range(open) + " " + unit.word() + " open";
  }

  /**
   * The text under a pairing's margin, or in place of it: what limits the pairing or why it has no
   * margin. What {@link #marks} lists is not repeated.
   */
  public String reason(Outcome outcome) {
    String limit =
        outcome.recommended().flatMap(Recommendation::limit).map(Words::limit).orElse("");
    return switch (outcome.verdict()) {
      case FITS -> joined("\n", limit, roomiest(outcome));
      case AWKWARD ->
          joined("\n", new CaveatWords(unit).hand(outcome), joined("\n", limit, roomiest(outcome)));
      case LIMITED -> joined("\n", opening(outcome), limit);
      case MEASURE -> joined("\n", joined(", or ", "measure again", opening(outcome)), limit);
      case NO_PLACE ->
          outcome.recommended().isPresent()
              ? limit
              : "even with every "
                  + (hasRange(outcome) ? "open reading" : "blank")
                  + " at its best";
      case NO_MOUNT -> "neither bolts nor clamps hold it";
      case UNKNOWN -> undecided(outcome);
    };
  }

  /**
   * {@code roomiest place 31.5}: the best margin, if another place than the one recommended has it.
   */
  private String roomiest(Outcome outcome) {
    return outcome.bestMargin().isEmpty() || outcome.bestMargin().equals(outcome.margin())
        ? ""
        : "roomiest place " + unit.text(outcome.bestMargin().orElseThrow(), Rounding.DOWN);
  }

  /** {@code keep open 76.2 to 152.4}, rounded inward to the displayed digits. */
  public String opening(Outcome outcome) {
    return outcome.usableOpening().map(open -> KEEP_OPEN + range(open)).orElse("");
  }

  /** Both ends of an opening, rounded inward. */
  public String range(Interval open) {
    return unit.brief(open.lo(), Rounding.UP) + " to " + unit.brief(open.hi(), Rounding.DOWN);
  }

  /** Further remarks about a pairing; for one without a place only those on weight and room. */
  public List<String> marks(Outcome outcome) {
    List<String> marks = new ArrayList<>(new CaveatWords(unit).of(outcome));
    marks.addAll(otherMarks(outcome));
    return marks;
  }

  /** The marks that are no caveats. */
  public List<String> otherMarks(Outcome outcome) {
    List<String> marks = new ArrayList<>(placelessMarks(outcome));
    if (!Finding.hasPlace(outcome)) {
      return marks;
    }
    if (outcome.shortestToolTooShort()) {
      marks.add("shortest tool does not clear the bed");
    }
    if (outcome.verdict() == Verdict.LIMITED) {
      addUnlessEmpty(marks, new CaveatWords(unit).hand(outcome));
    }
    outcome.recommended().ifPresent(place -> marks.addAll(placeMarks(outcome.machine(), place)));
    if (!outcome.open().isEmpty()) {
      marks.add("holds " + new OpenWords(unit).whatever(outcome.openReadings()));
    }
    return marks;
  }

  /** The marks that are the same wherever the vise stands: weight, and room over the jaws. */
  public static List<String> placelessMarks(Outcome outcome) {
    List<String> marks = new ArrayList<>();
    if (outcome.loadLeft().filter(left -> left.signum() < 0).isPresent()) {
      marks.add("too heavy");
    }
    if (outcome.roomOverJaws().isPresent() && outcome.roomOverJaws().getAsLong() <= 0) {
      marks.add("no room over the jaws");
    }
    return marks;
  }

  /** The marks of a place that are no caveats: straps, smaller bolts, what the spindle misses. */
  public List<String> placeMarks(Machine machine, Recommendation place) {
    List<String> marks = new ArrayList<>();
    if (place.fastening().clamped()) {
      marks.add("held by strap clamps");
    }
    if (place.thread().isPresent() && place.thread().getAsLong() < slotBolt(machine)) {
      marks.add(ThreadWords.of(place.thread()) + " bolts, smaller than the slot's");
    }
    addUnlessEmpty(marks, missed(place.reachShortfall()));
    return marks;
  }

  /**
   * {@code spindle misses 12.5 of the work}; empty if it reaches all.
   *
   * @param shortfall in half-nanometres
   */
  public String missed(long shortfall) {
    return shortfall > 0
        ? "spindle misses " + unit.brief(shortfall, Rounding.UP) + " of the work"
        : "";
  }

  /** The diameter of the bolt that goes with the machine's slots. */
  private static long slotBolt(Machine machine) {
    return TNut.boltFor(machine.slots().width().length()).orElse(0);
  }

  private static void addUnlessEmpty(List<String> marks, String mark) {
    if (!mark.isEmpty()) {
      marks.add(mark);
    }
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
    String turned = turned(vise);
    String handle = handleComesOff(vise) ? "handle off while cutting" : "";
    return joined("; ", joined("; ", turned, handle), exact(vise.provenance()));
  }

  /**
   * How far a vise that stands turned on its swivel base is overclaimed, and that room to tap it
   * square is computed with it turned; empty for any other.
   */
  public static String turned(Vise vise) {
    return vise.isTurned()
        ? "jaws turned, claimed up to 5 mm (0.2 in) too large; room to tap it square is computed at"
            + " that angle"
        : "";
  }

  /** {@code 30 degrees counterclockwise, seen from above}. */
  public static String angle(Swivel swivel) {
    return swivel.angle().abs().stripTrailingZeros().toPlainString()
        + " degrees "
        + (swivel.angle().signum() > 0 ? "counterclockwise" : "clockwise")
        + ", seen from above";
  }

  private static String exact(Provenance provenance) {
    return provenance.assumedExact() ? "tolerance taken as 0" : "";
  }

  /** The verdict with its sign: {@code ● fits}. */
  public static String signed(Finding finding) {
    return finding.sign() + " " + finding.brief();
  }

  /** {@link #signed} and what the verdict means, for a legend. */
  public static String explained(Finding finding) {
    return finding.sign() + " " + finding.words();
  }

  private static String joined(String between, String first, String second) {
    return first.isEmpty() || second.isEmpty() ? first + second : first + between + second;
  }
}
