package org.jawroom.report.assess;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.advice.Advice;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.advice.assess.NutFit;
import org.jawroom.advice.assess.Room;
import org.jawroom.advice.assess.RoomLimit;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.shop.Job;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.jawroom.standards.ClearanceHole;
import org.jawroom.standards.TNut;

/** The facts about a machine that might be bought, in words; lengths in the chosen unit. */
record AssessWords(PeopleUnit unit, Assessment assessment, int named) {
  static final String NOTHING = "–";
  static final String IN_DOUBT = "in doubt";

  private static final String UNKNOWN = "unknown: ask";

  /** {@code 3: plain 125, plain 160 and 1 more}; the number alone without names. */
  String counted(List<String> names, boolean withNames) {
    return withNames && !names.isEmpty() ? names.size() + ": " + some(names) : "" + names.size();
  }

  /** The vises with a verdict: {@code 2, 1 in doubt: plain 125 (in doubt), plain 160}. */
  String vises(Assessed assessed, Verdict verdict, boolean withNames) {
    List<Outcome> outcomes = assessed.outcomes(verdict);
    return marked(
        outcomes.stream().map(outcome -> outcome.vise().name()).toList(),
        outcomes.stream().map(outcome -> !outcome.inDoubt().isEmpty()).toList(),
        withNames);
  }

  /** Jobs that are held, likewise. */
  String held(Assessed assessed, List<Job> held, boolean withNames) {
    return marked(jobs(held), held.stream().map(assessed.inDoubt()::contains).toList(), withNames);
  }

  private String marked(List<String> names, List<Boolean> inDoubt, boolean withNames) {
    List<String> words = new ArrayList<>();
    for (int at = 0; at < names.size(); at++) {
      words.add(names.get(at) + (inDoubt.get(at) ? " (" + IN_DOUBT + ")" : ""));
    }
    long doubts = inDoubt.stream().filter(doubt -> doubt).count();
    return names.size()
        + (doubts > 0 ? ", " + doubts + " " + IN_DOUBT : "")
        + (withNames && !names.isEmpty() ? ": " + some(words) : "");
  }

  /**
   * {@code plain 125, long: whatever rear_gap is, from 10 to 40 mm; …}; nothing if none is open.
   */
  String whatever(Assessed assessed) {
    Map<String, List<String>> words = new LinkedHashMap<>();
    resting(assessed)
        .forEach(
            outcome ->
                words
                    .computeIfAbsent(
                        new OpenWords(unit).whatever(outcome.openReadings()),
                        first -> new ArrayList<>())
                    .add(outcome.vise().name()));
    return words.isEmpty()
        ? NOTHING
        : words.entrySet().stream()
            .map(one -> some(one.getValue()) + ": " + one.getKey())
            .collect(Collectors.joining("; "));
  }

  /** The pairings with a place that holds for every value of an open reading. */
  static List<Outcome> resting(Assessed assessed) {
    return assessed.vises().stream()
        .map(Advice::outcome)
        .filter(outcome -> outcome.recommended().isPresent() && !outcome.openReadings().isEmpty())
        .filter(outcome -> outcome.verdict() != Verdict.NO_PLACE)
        .toList();
  }

  /** {@code rear_gap of knee mill may be wrong}. */
  static String suspects(Assessed assessed) {
    return assessed.suspects().isEmpty()
        ? NOTHING
        : CaveatWords.suspects(assessed.suspects()) + " may be wrong";
  }

  private String some(List<String> names) {
    int more = names.size() - named;
    String first = names.stream().limit(named).collect(Collectors.joining(", "));
    return more > 0 ? first + " and " + more + " more" : first;
  }

  static List<String> vises(Collection<Vise> vises) {
    return vises.stream().map(Vise::name).toList();
  }

  static List<String> jobs(Collection<Job> jobs) {
    return jobs.stream().map(Job::name).toList();
  }

  String status(Machine machine) {
    return machine.candidate() ? "candidate" : "owned";
  }

  String price(Machine machine) {
    return machine.price().map(BigDecimal::toPlainString).orElse(NOTHING);
  }

  String table(Machine machine) {
    return figure(machine.tableLength()) + " × " + figure(machine.tableWidth());
  }

  String travel(Machine machine) {
    return figure(machine.travelX()) + " × " + figure(machine.travelY());
  }

  String slots(Machine machine) {
    Slots slots = machine.slots();
    String words =
        slots.count()
            + " along "
            + slots.direction().letter()
            + ", "
            + near(slots.width())
            + " wide";
    return slots.needsPitch() ? words + ", " + near(slots.pitch()) + " apart" : words;
  }

  String nose(Machine machine) {
    return length(machine.noseMin()) + " to " + length(machine.noseMax());
  }

  String load(Machine machine) {
    return machine.maxLoad().map(AssessWords::kilograms).orElse(UNKNOWN);
  }

  static String kilograms(BigDecimal load) {
    return JobWords.kilograms(load, RoundingMode.FLOOR) + " kg";
  }

  String source(Machine machine) {
    return machine.provenance().assumedExact()
        ? "not given: taken as exact"
        : (machine.provenance().source().isEmpty() ? "" : machine.provenance().source() + ", ")
            + "± "
            + unit.brief(machine.provenance().tolerance(), Rounding.UP);
  }

  String notLookedFor(Machine machine) {
    List<String> kinds = LookedFor.not(machine);
    return kinds.isEmpty() ? "nothing usual" : String.join(", ", kinds);
  }

  /**
   * {@code plain 125 ×3, plain 160 ×2}: the kinds of which more than one stand on the table
   * together.
   */
  String sideBySide(Assessed assessed, boolean withNames) {
    List<Advice> several = assessed.vises().stream().filter(vise -> count(vise) > 1).toList();
    if (several.isEmpty()) {
      return "no two of a kind";
    }
    if (withNames) {
      return some(
          several.stream().map(vise -> vise.outcome().vise().name() + " ×" + count(vise)).toList());
    }
    return "up to " + several.stream().mapToInt(AssessWords::count).max().getAsInt();
  }

  static int count(Advice vise) {
    return vise.sideBySide().map(SideBySide::count).orElse(0);
  }

  /** {@code plain 160, opens 150, jaw 160, 4.2 to spare}. */
  String best(Assessed assessed) {
    return assessed
        .best()
        .map(
            best ->
                best.outcome().vise().name()
                    + ", opens "
                    + figure(best.opening())
                    + ", jaw "
                    + figure(best.jaw())
                    + ", "
                    + figure(best.margin())
                    + " to spare"
                    + (best.outcome().verdict() == Verdict.FITS
                        ? ""
                        : " (" + best.outcome().verdict().code() + ")")
                    + doubt(best))
        .orElse("none");
  }

  String bestName(Assessed assessed) {
    return assessed.best().map(best -> best.outcome().vise().name() + doubt(best)).orElse("none");
  }

  private static String doubt(PairingMerit best) {
    return best.outcome().inDoubt().isEmpty() ? "" : ", " + IN_DOUBT;
  }

  String homeless(Assessed assessed) {
    List<Vise> fit = assessed.clear();
    return counted(vises(assessment.homeless().stream().filter(fit::contains).toList()), true);
  }

  String bolt(Machine machine) {
    OptionalLong thread = thread(machine);
    if (machine.slots().width().isBlank()) {
      return UNKNOWN;
    }
    return thread.isPresent() ? "M" + thread.getAsLong() / Length.MM : "none goes in";
  }

  /** Empty if no bolt goes into the slots or their width is blank. */
  static OptionalLong thread(Machine machine) {
    Dimension width = machine.slots().width();
    return width.isKnown() && machine.slots().count() > 0
        ? TNut.boltFor(width.length())
        : OptionalLong.empty();
  }

  String nuts(Assessed assessed, NutFit.Fit fit, boolean withNames) {
    if (assessed.machine().slots().width().isBlank()) {
      return UNKNOWN;
    }
    List<String> sizes =
        assessed.nuts().stream()
            .filter(nut -> nut.fit() == fit)
            .map(nut -> nearest(nut.slot()) + (withNames ? " (" + some(nut.machines()) + ")" : ""))
            .toList();
    return sizes.isEmpty() ? "none" : String.join(withNames ? "; " : ", ", sizes);
  }

  /**
   * The {@code index}th limit of one kind on the room in which the jaws open along {@code axis}.
   */
  String room(Assessed assessed, Axis axis, Function<Room, List<RoomLimit>> kind, int index) {
    Optional<RoomLimit> best = limit(assessed.room(), axis, kind, index);
    Optional<RoomLimit> atZero = limit(assessed.roomAtZero(), axis, kind, index);
    if (best.isEmpty()) {
      return NOTHING;
    }
    if (assessed.roomBlanks().isEmpty()) {
      return limit(best.get());
    }
    String gaps =
        assessed.roomBlanks().stream()
            .filter(column -> column.column().endsWith("gap"))
            .map(Column::column)
            .collect(Collectors.joining(", "));
    String least = hasRange(assessed) ? " at their least (a blank one 0); " : " 0; ";
    return atZero.map(limit -> limit(limit) + " with " + gaps + least).orElse("")
        + "at best "
        + limit(best.get());
  }

  /** Whether some gap of the machine is known within bounds, so that its least is not always 0. */
  static boolean hasRange(Assessed assessed) {
    return assessed.machine().guards().stream()
        .anyMatch(guard -> guard.gap().isOpen() && !guard.gap().isBlank());
  }

  private static Optional<RoomLimit> limit(
      List<Room> rooms, Axis axis, Function<Room, List<RoomLimit>> kind, int index) {
    return rooms.stream()
        .filter(room -> room.turns().get(0).uAxis() == axis)
        .findFirst()
        .map(room -> kind.apply(room).get(index));
  }

  private String limit(RoomLimit limit) {
    return switch (limit.relation()) {
      case AT_MOST -> figure(limit.most().getAsLong());
      case ALWAYS -> "nothing listed limits it";
      default -> "no room";
    };
  }

  String roomBlanks(Assessed assessed) {
    return assessed.roomBlanks().isEmpty()
        ? "nothing"
        : assessed.roomBlanks().stream().map(Column::column).collect(Collectors.joining(", "));
  }

  String stack(Assessed assessed) {
    return assessed.stack().isPresent() ? figure(assessed.stack().getAsLong()) : UNKNOWN;
  }

  /** The sides to which the handle may point. */
  String handle(Machine machine) {
    return machine.turns().stream()
        .sorted()
        .map(Orientation::word)
        .collect(Collectors.joining(", "));
  }

  /** The distance that two bolt holes need, for each way the vise may stand. */
  String holes(Machine machine) {
    List<String> words = new ArrayList<>();
    for (Axis axis : List.of(Axis.Y, Axis.X)) {
      List<Orientation> turns =
          machine.turns().stream().filter(turn -> turn.uAxis() == axis).sorted().toList();
      if (!turns.isEmpty()) {
        // Two abreast stand side by side across the direction in which the jaws open.
        boolean abreastAlong = machine.slots().direction() != axis;
        words.add(
            "handle "
                + turns.stream().map(Orientation::word).collect(Collectors.joining(" or "))
                + ": "
                + (abreastAlong
                    ? "two abreast go into one slot at any distance; two in line, "
                    : "two in line go into one slot at any distance; two abreast, ")
                + apart(machine.slots()));
      }
    }
    return String.join("; ", words);
  }

  private String apart(Slots slots) {
    if (slots.count() < 2) {
      return "not at all: there is one slot";
    }
    if (!slots.positions().isEmpty()) {
      return "as far apart as two of its slots: "
          + some(distances(slots.positions()).stream().map(this::nearest).toList());
    }
    if (!slots.pitch().isKnown()) {
      return "as far apart as two of its slots: slot_pitch is unknown";
    }
    List<Long> multiples = new ArrayList<>();
    for (int between = 1; between < slots.count(); between++) {
      multiples.add(between * slots.pitch().length());
    }
    return multiples.stream().limit(named).map(this::nearest).collect(Collectors.joining(" or "))
        + " apart, or slotted holes that reach that";
  }

  private static List<Long> distances(List<Long> positions) {
    return positions.stream()
        .flatMap(from -> positions.stream().filter(to -> to > from).map(to -> to - from))
        .distinct()
        .sorted()
        .toList();
  }

  String hole(Machine machine) {
    OptionalLong thread = thread(machine);
    if (thread.isEmpty()) {
      return bolt(machine);
    }
    OptionalLong hole = ClearanceHole.of(thread.getAsLong());
    return hole.isPresent()
        ? unit.brief(hole.getAsLong(), Rounding.UP) + " or more"
        : "more than " + unit.brief(thread.getAsLong(), Rounding.UP);
  }

  private String near(Dimension dimension) {
    return dimension.isKnown() ? nearest(dimension.length()) : "unknown";
  }

  private String nearest(long length) {
    return unit.fine(length, Rounding.NEAREST);
  }

  private String length(Dimension dimension) {
    return dimension.isKnown() ? figure(dimension.length()) : "unknown";
  }

  String figure(long length) {
    return unit.brief(length, Rounding.DOWN);
  }
}
