package org.jawroom.report.page;

import java.util.List;
import java.util.Map;
import org.jawroom.advice.Advice;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Bolted;

/** What the page keeps of a solved pairing. */
public final class PagePairing {

  /** The parts that fasten a vise in one mount with one thread, as data. */
  record Fastened(long thread, int mount, List<Object> parts) {}

  private final Outcome outcome;
  private final Map<String, Object> data;
  private final List<Fastened> fastened;

  private PagePairing(Outcome outcome, Map<String, Object> data, List<Fastened> fastened) {
    this.outcome = outcome;
    this.data = data;
    this.fastened = fastened;
  }

  /** {@code advice}: that on the pairing. */
  public static PagePairing of(Advice advice, SolvedPairing solved) {
    Outcome outcome = solved.outcome();
    boolean isDrawn = outcome.recommended().isPresent() || outcome.verdict() == Verdict.UNKNOWN;
    List<Bolted> held = isDrawn ? solved.model().bolted() : List.of();
    return new PagePairing(
        outcome,
        PairingData.of(
            advice, solved.model(), held, solved.inspection().flatMap(Inspection::range)),
        held.stream().map(seat -> ViseData.fastened(outcome.vise(), seat)).distinct().toList());
  }

  public Outcome outcome() {
    return outcome;
  }

  Map<String, Object> data() {
    return data;
  }

  /** Empty if the pairing is not drawn. */
  List<Fastened> fastened() {
    return fastened;
  }
}
