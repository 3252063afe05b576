package org.jawroom.placement.pairing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.placement.bolting.Footprint;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/** The outcome of a pairing with what was worked out for it: its model, and the region chosen. */
public final class SolvedPairing {
  private final Model model;
  private final VerdictRule rule;
  private final Outcome outcome;

  private SolvedPairing(Model model, VerdictRule rule, Outcome outcome) {
    this.model = model;
    this.rule = rule;
    this.outcome = outcome;
  }

  /** Solves a pairing; pure. */
  public static SolvedPairing of(PreparedMachine machine, PreparedVise vise) {
    Model model = Model.of(machine, vise);
    VerdictRule rule = judgement(model);
    return new SolvedPairing(model, rule, outcome(machine, vise, model, rule));
  }

  public Outcome outcome() {
    return outcome;
  }

  private static VerdictRule judgement(Model model) {
    VerdictRule rule = model.judgement();
    return Optional.of(rule)
        .filter(found -> found.verdict() == Verdict.NO_PLACE)
        .flatMap(found -> TurnedOpening.of(model))
        .map(usable -> rule.limited(usable, model.within(usable)))
        .orElse(rule);
  }

  /** The pairing as it is, ready for more queries. */
  public Model model() {
    return model;
  }

  /** Details of the recommended placement; empty without one. */
  public Optional<Inspection> inspection() {
    return outcome
        .recommended()
        .map(
            place ->
                new Inspection(
                    model, rule.regions(), rule.choice().orElseThrow().seat().region(), place));
  }

  /** The geometry of the recommended placement; empty without one. */
  public Optional<Layout> layout() {
    return inspection().map(Inspection::layout);
  }

  /**
   * Details of each of several vises that stand side by side, over the full opening range; they
   * share turn and mount.
   *
   * @param row that of {@link #sideBySide}, or equal to it
   */
  public List<Inspection> inspections(SideBySide row, List<Place> places) {
    Region region = rule.regions().get(row.region());
    return places.stream()
        .map(
            place ->
                new Inspection(
                    model, rule.regions(), region, model.description().of(region, place)))
        .toList();
  }

  /** What must be said beside a placement of this pairing, such as that of a job. */
  public List<Caveat> caveatsAt(Recommendation place) {
    return with(outcome.inDoubt(), caveats(model, outcome.vise(), place));
  }

  /**
   * The largest number of vises of this kind that stand side by side on one table, none with a
   * larger reach shortfall than the recommended placement; none if the pairing is not clear.
   */
  public SideBySide sideBySide() {
    return outcome.verdict().isClear()
        ? model.sideBySide(rule.regions(), outcome.recommended().orElseThrow().reachShortfall())
        : SideBySide.NONE;
  }

  private static Outcome outcome(
      PreparedMachine preparedMachine, PreparedVise preparedVise, Model model, VerdictRule rule) {
    Settings settings = preparedMachine.settings();
    Machine machine = preparedMachine.machine();
    Vise vise = preparedVise.vise();
    OptionalLong roomOverJaws = roomOverJaws(machine, vise);
    Optional<BigDecimal> loadLeft = loadLeft(machine, vise);
    boolean tooShort = shortestToolTooShort(settings, machine, vise);
    List<Measurand> inDoubt = settings.evidence().suspects(machine, vise);
    if (!model.isOpen() || !rule.isHopeless()) {
      // What holds at worst holds for every value of the open readings.
      Optional<Recommendation> place = rule.choice().map(model.description()::of);
      return new Outcome(
          machine,
          vise,
          rule.verdict(),
          rule.bestMargin(),
          place,
          rule.usable(),
          place.isPresent() && rule.choice().get().margin() >= 0
              ? with(inDoubt, caveats(model, vise, place.get()))
              : with(inDoubt, List.of()),
          roomOverJaws,
          loadLeft,
          tooShort,
          MarginBounds.of(model),
          model.blanks(),
          inDoubt,
          place.flatMap(
              at ->
                  settings
                      .evidence()
                      .checked(
                          settings.clearance(), machine, vise, at.handleTo(), at.x(), at.y())));
    }
    Optional<Verdict> hopeless = model.atBest().hopeless();
    // If the vise fits nowhere even at best, no measurement helps; else any number would be a
    // guess.
    return new Outcome(
        machine,
        vise,
        hopeless.orElse(Verdict.UNKNOWN),
        OptionalLong.empty(),
        Optional.empty(),
        Optional.empty(),
        with(inDoubt, List.of()),
        hopeless.isPresent() ? roomOverJaws : OptionalLong.empty(),
        hopeless.isPresent() ? loadLeft : Optional.empty(),
        hopeless.isPresent() && tooShort,
        MarginBounds.of(model),
        model.blanks(),
        inDoubt,
        Optional.empty());
  }

  private static List<Caveat> with(List<Measurand> inDoubt, List<Caveat> others) {
    List<Caveat> caveats = new ArrayList<>(others);
    if (!inDoubt.isEmpty()) {
      caveats.add(0, Caveat.IN_DOUBT);
    }
    return caveats;
  }

  private static List<Caveat> caveats(Model model, Vise vise, Recommendation place) {
    List<Caveat> caveats = new ArrayList<>();
    if (place.limit().isEmpty()) {
      caveats.add(Caveat.NOTHING_LISTED);
    }
    if (model.leavesHeadsOut()) {
      caveats.add(Caveat.HEADS_LEFT_OUT);
    }
    if (hangsOver(vise, place)) {
      caveats.add(Caveat.OVERHANG);
    }
    if (!place.settable()) {
      caveats.add(Caveat.NOT_SETTABLE);
    }
    return caveats;
  }

  /** Whether more than a quarter of the base, or an unknown part of it, hangs over an edge. */
  private static boolean hangsOver(Vise vise, Recommendation place) {
    OptionalLong length = Footprint.leastLength(vise);
    return length.isPresent() && place.overhang().isPresent()
        ? 4 * place.overhang().getAsLong() > length.getAsLong()
        : vise.simple();
  }

  private static OptionalLong roomOverJaws(Machine machine, Vise vise) {
    Dimension nose = machine.noseMax();
    return nose.isBlank() || nose.isNone()
        ? OptionalLong.empty()
        : OptionalLong.of(nose.values(0).lo() - vise.top());
  }

  private static Optional<BigDecimal> loadLeft(Machine machine, Vise vise) {
    return machine.maxLoad().flatMap(load -> vise.mass().map(load::subtract));
  }

  private static boolean shortestToolTooShort(Settings settings, Machine machine, Vise vise) {
    Dimension nose = machine.noseMax();
    return settings.shortestTool().isPresent()
        && !nose.isBlank()
        && vise.base().bedHeight() + settings.shortestTool().getAsLong() > nose.values(0).lo();
  }
}
