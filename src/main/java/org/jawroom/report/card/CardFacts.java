package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jawroom.advice.Explanation;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.space.Play;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.readings.Readings;
import org.jawroom.report.wording.TapeWords;
import org.jawroom.report.xlsx.RunFacts;

/**
 * The whole content of a card, as text and rounded figures.
 *
 * @param stamp the verdict
 * @param alarms warnings that nobody may overlook
 * @param unit of every length without a unit of its own
 * @param tape the position, along x, then along y
 * @param placing further facts about placing it
 * @param bolts the bolting hardware
 * @param limits the limits to observe
 * @param checkpoints the verification table
 * @param origin the source tables and their age
 * @param names names from tables, which may be long
 */
public record CardFacts(
    String machine,
    String vise,
    String stamp,
    List<String> alarms,
    String unit,
    List<TapeRange> tape,
    List<Item> placing,
    List<Item> bolts,
    List<Item> limits,
    List<Checkpoint> checkpoints,
    List<String> steps,
    List<String> cautions,
    List<Item> origin,
    List<String> names) {

  /** With less play than this along an axis nobody can tap a vise square. */
  private static final long LEAST_PLAY = 2 * Length.MM;

  public CardFacts {
    alarms = List.copyOf(alarms);
    tape = List.copyOf(tape);
    placing = List.copyOf(placing);
    bolts = List.copyOf(bolts);
    limits = List.copyOf(limits);
    checkpoints = List.copyOf(checkpoints);
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
    origin = List.copyOf(origin);
    names = List.copyOf(names);
  }

  /** Whether the outcome has a place, and so a card. */
  public static boolean isPossible(Outcome outcome) {
    Verdict verdict = outcome.verdict();
    return verdict.isClear() || verdict == Verdict.LIMITED || verdict == Verdict.MEASURE;
  }

  /**
   * Returns the content of the card of a pairing.
   *
   * @throws IllegalArgumentException unless {@link #isPossible}
   */
  public static CardFacts of(Explanation explanation, RunFacts run) {
    Outcome outcome = explanation.advice().outcome();
    Stamp stamp = Stamp.of(outcome);
    Recommendation place = outcome.recommended().orElseThrow();
    PeopleUnit unit = run.unit();
    BoltFacts bolts = new BoltFacts(unit, outcome, place);
    List<Item> limits = new ArrayList<>(new TravelLimits(unit, outcome.machine()).items());
    limits.add(new NoseLimits(unit, outcome, place).item());
    limits.add(bolts.height());
    return new CardFacts(
        outcome.machine().name(),
        outcome.vise().name(),
        stamp.words(),
        alarms(unit, outcome),
        unit.plural(),
        new TapeRanges(unit, outcome.machine(), outcome.vise()).of(place),
        placing(unit, explanation, place),
        bolts.items(),
        limits,
        new Checkpoints(unit, explanation).rows(),
        new Steps(outcome.vise(), place).lines(),
        new CardCautions(unit, explanation, run).lines(),
        Origin.items(outcome, run),
        names(explanation));
  }

  private static List<String> alarms(PeopleUnit unit, Outcome outcome) {
    List<String> alarms = new ArrayList<>(new OpeningLimits(unit, outcome).words());
    if (outcome.verdict() == Verdict.MEASURE) {
      alarms.add(
          "NOT A GO: it fits only if the readings are better than told. Measure again, correct the"
              + " tables, make a new card. Do not run on this one."
              + Readings.behind(outcome)
                  .map(readings -> " What adds up: " + readings.words().replace("\n", "; ") + ".")
                  .orElse(""));
    }
    if (outcome.verdict() == Verdict.FITS && outcome.bestMargin().isEmpty()) {
      alarms.add("Nothing is listed that it could hit. Look before you trust it.");
    }
    new Weight(unit, outcome).tooHeavy().ifPresent(alarms::add);
    if (outcome.roomOverJaws().isPresent() && outcome.roomOverJaws().getAsLong() <= 0) {
      alarms.add("The jaws do not go under the spindle nose, even at its highest.");
    }
    if (outcome.shortestToolTooShort()) {
      alarms.add("The shortest tool does not clear the vise's bed.");
    }
    return alarms;
  }

  private static List<Item> placing(
      PeopleUnit unit, Explanation explanation, Recommendation place) {
    Outcome outcome = explanation.advice().outcome();
    TapeWords tape = new TapeWords(unit, outcome.machine(), outcome.vise());
    List<Item> items = new ArrayList<>();
    items.add(
        Item.of(
            place.play().map(CardFacts::ranges).orElse("No range: nothing is to spare there.")));
    items.add(
        new Item(
            "Handle:",
            "to the "
                + place.handleTo().word()
                + new Steps(outcome.vise(), place).handle().map(how -> ", " + how).orElse("")
                + "."));
    items.add(new Item("Bolts:", tape.bolts(place.slots()) + "; mount: " + place.mount() + "."));
    items.add(Steps.keys());
    items.add(
        new Item(
            "Roomiest place:",
            explanation
                .roomiest()
                .map(roomiest -> roomiest(unit, roomiest, tape))
                .orElse("this one.")));
    items.add(new Weight(unit, outcome).item());
    return items;
  }

  private static String ranges(Play play) {
    String tight =
        play.left() + play.right() < LEAST_PLAY
            ? " left to right"
            : play.front() + play.rear() < LEAST_PLAY ? " front to rear" : "";
    return "A range holds only while the other measure is at its best."
        + (tight.isEmpty() ? "" : " Under 2 mm of play" + tight + ": hard to tap square.");
  }

  private static String roomiest(PeopleUnit unit, Roomiest roomiest, TapeWords tape) {
    return "handle to the "
        + roomiest.handleTo().word()
        + ", mount: "
        + roomiest.mount()
        + ", "
        + String.join(", ", tape.edges(roomiest.handleTo(), roomiest.x(), roomiest.y()))
        + roomiest
            .limit()
            .map(limit -> "; margin " + unit.brief(limit.margin(), Rounding.DOWN))
            .orElse("")
        + ". The spindle reaches less of the work there; this card does not hold there.";
  }

  private static List<String> names(Explanation explanation) {
    Outcome outcome = explanation.advice().outcome();
    List<String> names = new ArrayList<>();
    explanation.pairs().stream().map(limit -> limit.guard().name()).forEach(names::add);
    explanation.pairs().stream().map(limit -> limit.part().name()).forEach(names::add);
    outcome.machine().guardRows().forEach(guard -> names.add(guard.name()));
    outcome.vise().mounts().forEach(mount -> names.add(mount.name()));
    return names.stream().distinct().toList();
  }

  /** Returns a copy with another fact about placing it, before the others. */
  CardFacts withPlacing(Item first) {
    List<Item> more = new ArrayList<>(List.of(first));
    more.addAll(placing);
    return new CardFacts(
        machine,
        vise,
        stamp,
        alarms,
        unit,
        tape,
        more,
        bolts,
        limits,
        checkpoints,
        steps,
        cautions,
        origin,
        names);
  }

  /** Returns a copy in which names of more than {@code longest} letters are shortened. */
  CardFacts withNames(int longest) {
    UnaryOperator<String> cut = text -> ShortNames.cut(text, names, longest);
    return new CardFacts(
        ShortNames.cut(machine, longest),
        ShortNames.cut(vise, longest),
        stamp,
        alarms.stream().map(cut).toList(),
        unit,
        tape,
        Item.all(placing, cut),
        bolts,
        Item.all(limits, cut),
        checkpoints.stream().map(row -> row.with(cut)).toList(),
        steps,
        cautions.stream().map(cut).toList(),
        Item.all(origin, text -> ShortNames.cut(text, 10 * longest)),
        names);
  }
}
