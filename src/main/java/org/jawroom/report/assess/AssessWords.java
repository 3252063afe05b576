package org.jawroom.report.assess;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.shop.Job;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Vise;

/** The facts about a machine that might be bought, in words; lengths in the chosen unit. */
record AssessWords(PeopleUnit unit, Assessment assessment, int named) {
  static final String NOTHING = "–";
  static final String IN_DOUBT = "in doubt";

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
    return some(names, named);
  }

  /** The first of the names, and how many more there are. */
  static String some(List<String> names, int named) {
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
    return counted(vises(assessment.homeless().stream().filter(assessed::isClear).toList()), true);
  }

  String nuts(Assessed assessed, NutFit.Fit fit, boolean withNames) {
    if (assessed.machine().slots().width().isBlank()) {
      return OfferWords.UNKNOWN;
    }
    List<String> sizes =
        assessed.nuts().stream()
            .filter(nut -> nut.fit() == fit)
            .map(
                nut ->
                    offer().nearest(nut.slot())
                        + (withNames ? " (" + some(nut.machines()) + ")" : ""))
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
    return assessed.stack().isPresent() ? figure(assessed.stack().getAsLong()) : OfferWords.UNKNOWN;
  }

  /** The words for the machine's own columns. */
  OfferWords offer() {
    return new OfferWords(unit, named);
  }

  String figure(long length) {
    return offer().figure(length);
  }
}
