package org.jawroom.report.card.statement;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.drawing.view.Neighbour;
import org.jawroom.geometry.Length;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.TapSquare;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Play;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.picture.PairingDrawing;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Sides;
import org.jawroom.shop.vise.Vise;

/**
 * What a card shows: a pairing at its recommended place, or at the place of a job that it holds.
 *
 * @param outcome of the pairing
 * @param place that of the job, if there is one
 * @param caveats of that place
 * @param pairs every pair there, in ascending order of margin; of a row of vises each pair once, at
 *     the vise where it is tightest
 * @param range how far the vise may stand from the place; empty if the margin is negative, and with
 *     others on the table
 * @param roomiest the roomiest place, if it has more margin; empty for a job
 * @param reachShort empty for a job, since its part is within reach
 * @param row several vises side by side, of which the place is that of the tightest
 * @param standing of a vise where it stands the others on that table
 * @param warnings those of this machine and this vise
 */
public record CardSubject(
    Outcome outcome,
    Optional<JobOutcome> job,
    Recommendation place,
    List<Caveat> caveats,
    List<Limit> pairs,
    Layout layout,
    Optional<Play> range,
    Optional<Roomiest> roomiest,
    Optional<Sides<Long>> reachShort,
    Optional<CardRow> row,
    List<StandingOutcome> standing,
    List<String> warnings) {

  public CardSubject {
    caveats = List.copyOf(caveats);
    pairs = List.copyOf(pairs);
    standing = List.copyOf(standing);
    warnings = List.copyOf(warnings);
  }

  /** Whether the outcome has a place, and so a card. */
  public static boolean isPossible(Outcome outcome) {
    Verdict verdict = outcome.verdict();
    return verdict.isClear() || verdict == Verdict.LIMITED || verdict == Verdict.MEASURE;
  }

  /** Empty unless the pairing {@link #isPossible has a card}. */
  public static Optional<CardSubject> of(
      Settings settings, Machine machine, Vise vise, List<String> warnings) {
    SolvedPairing solved = Pairing.solved(settings, machine, vise);
    return solved
        .inspection()
        .filter(closer -> isPossible(solved.outcome()))
        .map(closer -> of(solved.outcome(), closer, List.of(), warnings));
  }

  /** The card of a vise where it stands; empty unless it may stay there. */
  public static Optional<CardSubject> of(StandingOutcome standing, List<String> warnings) {
    return standing
        .placed()
        .filter(CardSubject::isPossible)
        .map(placed -> of(placed, standing.there().orElseThrow(), standing.others(), warnings));
  }

  private static CardSubject of(
      Outcome outcome, Inspection closer, List<StandingOutcome> standing, List<String> warnings) {
    return new CardSubject(
        outcome,
        Optional.empty(),
        outcome.recommended().orElseThrow(),
        outcome.caveats(),
        closer.pairs(),
        closer.layout(),
        standing.isEmpty() ? closer.range() : Optional.empty(),
        closer.roomiest(),
        Optional.of(closer.reachShort()),
        Optional.empty(),
        standing,
        warnings);
  }

  /**
   * The card of {@code count} vises of a kind side by side.
   *
   * @param count at least 2
   * @throws IllegalArgumentException if so many do not stand there
   */
  public static CardSubject ofRow(
      Settings settings, SolvedPairing solved, int count, List<String> warnings) {
    SideBySide row = solved.sideBySide();
    if (count < 2 || count > row.count()) {
      throw new IllegalArgumentException(count + " of at most " + row.count() + " side by side");
    }
    List<Place> places = row.middle(count);
    List<Inspection> each = solved.inspections(row, places);
    int tightest = 0;
    for (int at = 1; at < count; at++) {
      if (margin(each.get(at)) < margin(each.get(tightest))) {
        tightest = at;
      }
    }
    Inspection shown = each.get(tightest);
    Vise vise = solved.outcome().vise();
    List<CardRow.Stand> stands = each.stream().map(one -> CardRow.Stand.of(vise, one)).toList();
    Sides<Long> reachShort = Sides.all(0L);
    for (Inspection one : each) {
      for (Side side : Side.values()) {
        reachShort =
            reachShort.with(side, Math.max(reachShort.get(side), one.reachShort().get(side)));
      }
    }
    return new CardSubject(
        solved.outcome(),
        Optional.empty(),
        shown.place(),
        each.stream()
            .flatMap(one -> solved.caveatsAt(one.place()).stream())
            .distinct()
            .sorted()
            .toList(),
        tightest(each),
        shown.layout(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(reachShort),
        Optional.of(new CardRow(stands, tightest, settings.spacing(), false)),
        List.of(),
        warnings);
  }

  /**
   * The card of one vise of a set that fits.
   *
   * @param index the vise, 0 the leftmost
   */
  public static CardSubject ofSet(
      Settings settings, SetOutcome set, int index, List<String> warnings) {
    SetOutcome.Stand stand = set.stands().get(index);
    Inspection there = stand.there();
    List<CardRow.Stand> stands =
        set.stands().stream().map(one -> CardRow.Stand.of(one.vise(), one.there())).toList();
    return new CardSubject(
        stand.placed(),
        Optional.empty(),
        there.place(),
        stand.placed().caveats(),
        there.pairs(),
        there.layout(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(there.reachShort()),
        Optional.of(new CardRow(stands, index, settings.spacing(), true)),
        List.of(),
        warnings);
  }

  private static long margin(Inspection of) {
    return of.place().margin().orElse(Length.ENDLESS);
  }

  /** Each pair once, at the vise where its margin is least, in ascending order of margin. */
  private static List<Limit> tightest(List<Inspection> each) {
    Map<List<Object>, Limit> least = new LinkedHashMap<>();
    each.stream()
        .flatMap(one -> one.pairs().stream())
        .forEach(
            limit ->
                least.merge(
                    List.of(
                        limit.part().role(),
                        limit.part().row(),
                        limit.guard().rank(),
                        limit.situation()),
                    limit,
                    (one, other) -> other.margin() < one.margin() ? other : one));
    return least.values().stream().sorted(Comparator.comparingLong(Limit::margin)).toList();
  }

  /**
   * The card of a job.
   *
   * @param solved the pairing that holds it
   * @throws IllegalArgumentException if the job is not held
   */
  public static CardSubject of(SolvedPairing solved, JobExplanation job, List<String> warnings) {
    if (!job.outcome().isHeld()) {
      throw new IllegalArgumentException("a job that is not held has no card");
    }
    Recommendation place = job.outcome().place().orElseThrow();
    return new CardSubject(
        solved.outcome(),
        Optional.of(job.outcome()),
        place,
        solved.caveatsAt(place),
        job.pairs(),
        job.layout().orElseThrow(),
        job.range(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        warnings);
  }

  /** The vises whose gaps this card asks to check: all of a row of one kind, else its own. */
  public List<CardRow.Stand> checked() {
    return row.filter(several -> !several.ofSet())
        .map(CardRow::all)
        .orElse(List.of(new CardRow.Stand(vise(), place, layout, pairs)));
  }

  /**
   * The least height of the nose over each vise on the table, as far as there is one, without those
   * of {@link #offTheSlots}. Nobody sets the jaws of the others by this card: they count over their
   * full opening.
   */
  public List<OptionalLong> nosesNotBelow() {
    if (row.isPresent()) {
      return row.get().all().stream().map(stand -> stand.place().noseNotBelow()).toList();
    }
    return Stream.concat(
            Stream.of(place.noseNotBelow()),
            standing.stream()
                .filter(other -> other.there().isPresent())
                .map(StandingOutcome::noseNotBelow))
        .toList();
  }

  /**
   * The names of the vises on the table whose place is not known, since they stand off the slots;
   * each name once.
   */
  public List<String> offTheSlots() {
    return standing.stream()
        .filter(other -> other.there().isEmpty())
        .map(other -> other.standing().vise().name())
        .distinct()
        .toList();
  }

  /** The other vises on the table. */
  public List<Vise> others() {
    return row.map(CardRow::others)
        .orElse(standing.stream().map(other -> other.standing().vise()).toList());
  }

  /** The others as a drawing shows them, without those of {@link #offTheSlots}. */
  public List<Neighbour> beside() {
    return row.map(CardRow::beside).orElse(PairingDrawing.beside(standing));
  }

  public Machine machine() {
    return outcome.machine();
  }

  public Vise vise() {
    return outcome.vise();
  }

  TapSquare tap() {
    return TapSquare.of(vise(), place, layout, pairs);
  }

  /** The outcome with the place of the card and its caveats. */
  public Outcome placed() {
    return outcome.at(
        outcome.verdict(),
        place,
        outcome.usableOpening(),
        caveats,
        job.isPresent() ? Optional.empty() : outcome.checked());
  }
}
