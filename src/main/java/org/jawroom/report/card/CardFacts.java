package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.card.measure.Checkpoint;
import org.jawroom.report.card.measure.Checkpoints;
import org.jawroom.report.card.measure.NoseLimits;
import org.jawroom.report.card.measure.OpeningLimits;
import org.jawroom.report.card.measure.TapeRange;
import org.jawroom.report.card.measure.TapeRanges;
import org.jawroom.report.card.measure.TravelLimits;
import org.jawroom.report.card.statement.CardCautions;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.card.statement.Origin;
import org.jawroom.report.card.statement.PartFacts;
import org.jawroom.report.card.statement.ShortNames;
import org.jawroom.report.card.statement.Steps;
import org.jawroom.report.card.statement.TapFacts;
import org.jawroom.report.card.statement.Weight;
import org.jawroom.report.card.statement.bolting.BoltFacts;
import org.jawroom.report.card.statement.bolting.StrapFacts;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.readings.Readings;
import org.jawroom.report.standing.StandingWords;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.Words;
import org.jawroom.report.wording.place.TapeWords;
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
 * @param tapping how it is tapped square
 * @param part the part of a job; empty without a job
 * @param limits the limits to observe
 * @param checkpoints the verification table
 * @param checkable whether what is found can go into the table {@code checks}
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
    List<Item> tapping,
    List<Item> part,
    List<Item> limits,
    List<Checkpoint> checkpoints,
    boolean checkable,
    List<String> steps,
    List<String> cautions,
    List<Item> origin,
    List<String> names) {

  public CardFacts {
    alarms = List.copyOf(alarms);
    tape = List.copyOf(tape);
    placing = List.copyOf(placing);
    bolts = List.copyOf(bolts);
    tapping = List.copyOf(tapping);
    part = List.copyOf(part);
    limits = List.copyOf(limits);
    checkpoints = List.copyOf(checkpoints);
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
    origin = List.copyOf(origin);
    names = List.copyOf(names);
  }

  /** Returns the content of a card. */
  static CardFacts of(CardSubject subject, RunFacts run) {
    Outcome outcome = subject.outcome();
    Recommendation place = subject.place();
    PeopleUnit unit = run.unit();
    List<Item> limits = new ArrayList<>(new TravelLimits(unit, outcome.machine()).items());
    limits.add(
        new NoseLimits(unit, outcome, subject.nosesNotBelow(), subject.offTheSlots()).item());
    List<Item> fastening;
    if (place.fastening().clamped()) {
      fastening = new StrapFacts(unit, subject).items();
    } else {
      BoltFacts bolts = new BoltFacts(unit, outcome, place);
      fastening = bolts.items();
      limits.add(bolts.height());
    }
    return new CardFacts(
        outcome.machine().name(),
        outcome.vise().name(),
        Stamp.words(subject),
        alarms(unit, subject),
        unit.plural(),
        new TapeRanges(unit, outcome.machine(), outcome.vise()).of(place, subject.range()),
        placing(unit, subject),
        fastening,
        new TapFacts(unit, subject).items(),
        subject.job().map(job -> new PartFacts(unit, job).items()).orElse(List.of()),
        limits,
        new Checkpoints(unit, subject).rows(),
        !outcome.vise().isTurned(),
        new Steps(outcome.vise(), place).lines(),
        new CardCautions(unit, subject).lines(),
        Origin.items(outcome, run),
        names(subject));
  }

  private static List<String> alarms(PeopleUnit unit, CardSubject subject) {
    Outcome outcome = subject.outcome();
    List<String> alarms = new ArrayList<>();
    if (!outcome.inDoubt().isEmpty()) {
      alarms.add(
          "NOT A GO: gaps found on the machine say that "
              + CaveatWords.suspects(outcome.inDoubt())
              + " may be wrong. Put the tables right, make a new card. Do not run on this one.");
    }
    if (subject.job().isEmpty()) {
      alarms.addAll(verdictAlarms(unit, outcome));
    } else {
      alarms.add("For the job " + subject.job().get().job().name() + " only.");
    }
    alarms.addAll(placeAlarms(unit, subject.placed()));
    subject.standing().stream()
        .flatMap(other -> StandingWords.trouble(unit, other).stream())
        .distinct()
        .forEach(words -> alarms.add("Mind, on the same table: " + words + "."));
    new Weight(unit, outcome, subject.others()).tooHeavy().ifPresent(alarms::add);
    if (outcome.roomOverJaws().isPresent() && outcome.roomOverJaws().getAsLong() <= 0) {
      alarms.add("The jaws do not go under the spindle nose, even at its highest.");
    }
    if (outcome.shortestToolTooShort()) {
      alarms.add("The shortest tool does not clear the vise's bed.");
    }
    return alarms;
  }

  private static List<String> verdictAlarms(PeopleUnit unit, Outcome outcome) {
    List<String> alarms = new ArrayList<>(new OpeningLimits(unit, outcome).words());
    if (outcome.verdict() == Verdict.MEASURE) {
      alarms.add(
          "NOT A GO: it fits only if the readings are better than stated. Measure again, correct"
              + " the tables, make a new card. Do not run on this one."
              + Readings.behind(outcome)
                  .map(readings -> " What adds up: " + readings.words().replace("\n", "; ") + ".")
                  .orElse(""));
    }
    return alarms;
  }

  /** What must be said of the card's own place, that of a job as well. */
  private static List<String> placeAlarms(PeopleUnit unit, Outcome outcome) {
    List<String> alarms = new ArrayList<>();
    if (outcome.verdict() == Verdict.AWKWARD) {
      String hand = new CaveatWords(unit).handInUnit(outcome);
      alarms.add(
          "Awkward: nothing is hit, but the "
              + (hand.isEmpty() ? "handle has" : hand + ",")
              + " less than a hand wants. Mind your knuckles.");
    }
    new CaveatWords(unit)
        .of(outcome).stream()
            .skip(outcome.caveats().contains(Caveat.IN_DOUBT) ? 1 : 0)
            .forEach(caveat -> alarms.add("Mind: " + caveat + ". Look before you trust it."));
    return alarms;
  }

  private static String ranges(CardSubject subject) {
    if (subject.row().isPresent()) {
      return "No range: each stands where it is listed.";
    }
    if (!subject.others().isEmpty()) {
      return "No range: others stand on the table.";
    }
    return subject.range().isPresent()
        ? "Within a range the spindle reaches no less of the work; a range holds only while the"
            + " other measure is at its best."
        : "No range: nothing is to spare there.";
  }

  private static List<Item> placing(PeopleUnit unit, CardSubject subject) {
    Outcome outcome = subject.outcome();
    Recommendation place = subject.place();
    TapeWords tape = new TapeWords(unit, outcome.machine(), outcome.vise());
    List<Item> items = new ArrayList<>();
    subject.row().ifPresent(row -> items.add(row.item(unit, outcome.machine())));
    items.add(Item.of(ranges(subject)));
    outcome
        .vise()
        .swivel()
        .ifPresent(
            swivel ->
                items.add(
                    new Item(
                        "Angle:",
                        Words.angle(swivel)
                            + ", set last: bolts, both measures and tapping are with the jaws"
                            + " square, at 0.")));
    items.add(
        new Item(
            "Handle:",
            "to the "
                + place.handleTo().word()
                + (outcome.vise().isTurned() ? " with the jaws square" : "")
                + new Steps(outcome.vise(), place).handle().map(how -> ", " + how).orElse("")
                + "."));
    items.add(
        new Item(
            place.fastening().clamped() ? "Straps:" : "Bolts:",
            (place.fastening().clamped() ? "" : place.mount() + ": ")
                + tape.fastening(place)
                + "."));
    items.add(Steps.keys());
    subject
        .roomiest()
        .ifPresent(
            roomiest -> items.add(new Item("Roomiest place:", roomiest(unit, roomiest, tape))));
    CaveatWords.checked(subject.placed()).ifPresent(who -> items.add(Item.of(who + ".")));
    items.add(new Weight(unit, outcome, subject.others()).item());
    return items;
  }

  private static String roomiest(PeopleUnit unit, Roomiest roomiest, TapeWords tape) {
    return "handle to the "
        + roomiest.handleTo().word()
        + ", "
        + roomiest.mount()
        + ", "
        + String.join(", ", tape.edges(roomiest))
        + roomiest
            .limit()
            .map(limit -> "; margin " + unit.brief(limit.margin(), Rounding.DOWN))
            .orElse("")
        + ". The spindle reaches less of the work there; this card does not hold there.";
  }

  private static List<String> names(CardSubject subject) {
    Outcome outcome = subject.outcome();
    List<String> names = new ArrayList<>();
    subject.pairs().stream().map(limit -> limit.guard().name()).forEach(names::add);
    subject.pairs().stream().map(limit -> limit.part().name()).forEach(names::add);
    subject.job().ifPresent(job -> names.add(job.job().name()));
    outcome.machine().guardRows().forEach(guard -> names.add(guard.name()));
    outcome.vise().mounts().forEach(mount -> names.add(mount.name()));
    subject.others().forEach(other -> names.add(other.name()));
    for (StandingOutcome other : subject.standing()) {
      other.limit().map(Limit::guard).ifPresent(guard -> names.add(guard.name()));
      other.limit().map(Limit::part).ifPresent(part -> names.add(part.name()));
    }
    return names.stream().distinct().toList();
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
        tapping,
        Item.all(part, cut),
        Item.all(limits, cut),
        checkpoints.stream().map(row -> row.with(cut)).toList(),
        checkable,
        steps,
        cautions.stream().map(cut).toList(),
        Item.all(origin, text -> ShortNames.cut(text, 10 * longest)),
        names);
  }
}
