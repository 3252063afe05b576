package org.jawroom.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jawroom.advice.Advice;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Bolted;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.space.Play;
import org.jawroom.report.page.PageValues.Facts;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.PairingWords;
import org.jawroom.shop.value.Column;

/** The page's data of one pairing. */
final class PairingData {
  private PairingData() {}

  /**
   * @param held the turns and mounts to draw; empty if the pairing has no place to draw
   * @param range how far the vise may stand beside its place
   */
  static Map<String, Object> of(
      Advice advice, Model model, List<Bolted> held, Optional<Play> range) {
    Outcome outcome = advice.outcome();
    Facts facts =
        new Facts()
            .with("finding", PairingWords.finding(outcome))
            .with("hand", outcome.verdict() == Verdict.FITS)
            .with("margin", boxed(PairingWords.margin(outcome)))
            .with("best", boxed(outcome.bestMargin()))
            .with("handGap", boxed(CaveatWords.handGap(outcome)))
            .with("sentence", PageValues.inBoth(words -> words.sentence(outcome)))
            .with("reason", PageValues.inBoth(words -> words.reason(outcome).replace("\n", "; ")))
            .with("marks", PageValues.linesInBoth(words -> words.marks(outcome)))
            .with("changes", PageValues.linesInBoth(words -> words.changes(advice)))
            .with("missing", outcome.missing().stream().map(Column::path).toList());
    if (outcome.verdict() == Verdict.NO_MOUNT) {
      facts.with("misses", PageValues.linesInBoth(words -> words.misses(outcome, model.misses())));
    }
    outcome
        .recommended()
        .ifPresentOrElse(
            place -> draw(outcome, place, held, facts),
            () -> {
              if (!held.isEmpty()) {
                start(outcome, model, held, facts);
              }
            });
    range.ifPresent(
        by -> facts.with("range", List.of(by.left(), by.right(), by.front(), by.rear())));
    return facts.map();
  }

  private static void draw(
      Outcome outcome, Recommendation place, List<Bolted> bolted, Facts facts) {
    facts
        .with("turn", place.handleTo().word())
        .with("mount", mount(place, bolted))
        .with("at", List.of(place.x(), place.y()))
        .with("settable", place.settable())
        .with("openings", PageValues.ends(place.openings()))
        .with("short", place.reachShortfall() > 0 ? place.reachShortfall() : null)
        .with("noseNotBelow", boxed(place.noseNotBelow()))
        .with("narrowed", narrowed(outcome))
        .with("limit", place.limit().map(limit -> limit(outcome, place, limit)).orElse(null))
        .with("seats", bolted.stream().map(PairingData::seat).toList());
  }

  /** The parts of a turned vise that counts with its jaws kept to the usable opening alone. */
  private static Map<String, Object> narrowed(Outcome outcome) {
    return outcome.verdict() == Verdict.LIMITED && outcome.vise().isTurned()
        ? ViseData.parts(outcome.vise().within(outcome.usableOpening().orElseThrow()))
        : null;
  }

  /**
   * Where supposing begins for a pairing that open readings leave unknown: with the most margin at
   * best, as near as its mount holds for sure.
   */
  private static void start(Outcome outcome, Model model, List<Bolted> held, Facts facts) {
    Optional<Roomiest> best = model.atBest().roomiest();
    Bolted seat =
        held.stream()
            .filter(
                one ->
                    best.filter(
                            place ->
                                place.handleTo() == one.turn()
                                    && place.mount().equals(one.fastening().name()))
                        .isPresent())
            .findFirst()
            .orElse(held.get(0));
    Rectangle places = seat.places().get(0);
    facts
        .with("start", true)
        .with("turn", seat.turn().word())
        .with("mount", seat.fastening().index())
        .with(
            "at",
            List.of(
                places.x().nearest(best.map(Roomiest::x).orElse(0L)),
                places.y().nearest(best.map(Roomiest::y).orElse(0L))))
        .with("openings", PageValues.ends(outcome.vise().opening()))
        .with("seats", held.stream().map(PairingData::seat).toList());
  }

  private static int mount(Recommendation place, List<Bolted> bolted) {
    return bolted.stream()
        .filter(
            seat -> seat.turn() == place.handleTo() && seat.fastening().equals(place.fastening()))
        .findFirst()
        .orElseThrow()
        .fastening()
        .index();
  }

  private static Map<String, Object> limit(Outcome outcome, Recommendation place, Limit limit) {
    return new Facts()
        .with("guard", limit.guard().name())
        .with("part", limit.part().name())
        .with("gap", limit.gap())
        .with("margin", limit.margin())
        .with("where", PageValues.inBoth(words -> words.where(outcome, limit, place.openings())))
        .map();
  }

  /**
   * [turn, mount, thread, n, x from, x to, y from, y to, …]: one turn and mount with the n regions
   * in which its bolts or clamps hold, then those in which they leave room to tap the vise square.
   */
  private static List<Object> seat(Bolted seat) {
    List<Object> data =
        new ArrayList<>(
            List.of(
                seat.turn().word(), seat.fastening().index(), thread(seat), seat.places().size()));
    for (Rectangle places :
        Stream.concat(seat.places().stream(), seat.settable().stream()).toList()) {
      data.addAll(List.of(places.x().lo(), places.x().hi(), places.y().lo(), places.y().hi()));
    }
    return data;
  }

  /** The thread of its bolts; of clamps that of their studs. */
  static long thread(Bolted seat) {
    return seat.fastening().anchors().orElseThrow().nutRoom();
  }

  private static Long boxed(OptionalLong length) {
    return length.isPresent() ? length.getAsLong() : null;
  }
}
