package org.jawroom.placement.pairing;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.bolting.ClampRegions;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.placement.bolting.MissSearch;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.bolting.Regions;
import org.jawroom.placement.search.AmountCandidates;
import org.jawroom.placement.search.BestPlace;
import org.jawroom.placement.search.Bolted;
import org.jawroom.placement.search.Description;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.search.SideBySideSearch;
import org.jawroom.shop.Column;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * A pairing under a setup, decomposed into regions and ready for queries. Whatever needs a blank
 * column is left out, which is never worse than the truth.
 */
public final class Model {
  private final PreparedMachine machine;
  private final PreparedVise vise;
  private final PreparedMachine.Guards guards;
  private final List<Region> regions;
  private final List<Column> blanks;

  private Model(
      PreparedMachine machine,
      PreparedVise vise,
      PreparedMachine.Guards guards,
      List<Region> regions,
      List<Column> blanks) {
    this.machine = machine;
    this.vise = vise;
    this.guards = guards;
    this.regions = regions;
    this.blanks = blanks;
  }

  public static Model of(Settings settings, Machine machine, Vise vise, Setup setup) {
    PreparedMachine prepared = PreparedMachine.of(settings, machine, setup);
    return of(prepared, PreparedVise.of(vise, setup.riser(), prepared.threads()));
  }

  /**
   * The same vise on a changed machine under another setup.
   *
   * @param changed a machine with the same slots as the original
   */
  public Model on(Machine changed, Setup setup) {
    PreparedMachine prepared = PreparedMachine.of(machine.settings(), changed, setup);
    return setup.riser() == machine.setup().riser()
        ? of(prepared, vise)
        : of(prepared, PreparedVise.of(vise.vise(), setup.riser(), prepared.threads()));
  }

  /** A changed vise on the same machine. */
  public Model with(Vise changed) {
    return of(machine, PreparedVise.of(changed, machine.setup().riser(), machine.threads()));
  }

  public static Model of(PreparedMachine machine, PreparedVise vise) {
    PreparedMachine.Guards guards = machine.guards(vise.bedHeight());
    Blanks blanks = new Blanks();
    blanks.add(vise.blanks());
    blanks.add(guards.blanks());
    List<Region> regions = Regions.of(machine, vise, guards.sorted(), blanks);
    return new Model(machine, vise, guards, regions, blanks.columns());
  }

  /**
   * The pairing with strap clamps instead of bolts; it has no positions unless the base is known.
   */
  public Model clamped() {
    List<Region> clamps =
        ClampRegions.of(
            machine.settings(), machine.machine(), vise.vise(), vise.body(), guards.sorted());
    return new Model(machine, vise, guards, clamps, blanks);
  }

  /** The blank columns it needs, without duplicates, in table order. */
  public List<Column> blanks() {
    return blanks;
  }

  /** Whether bolts line up anywhere. */
  public boolean hasPlaces() {
    return !regions.isEmpty();
  }

  /** Whether some position has margin ≥ 0 over the full opening range. */
  public boolean fits() {
    return BestPlace.belowZero(regions, machine, vise, vise.vise().opening()).isClear();
  }

  /**
   * The placement with the largest margin over the full opening range, regardless of the spindle's
   * reach.
   */
  public Optional<Roomiest> roomiest() {
    return regions.isEmpty() ? Optional.empty() : Optional.of(Roomiest.of(places()));
  }

  /** Details of {@code recommended}, which must come from this model. */
  public Inspection inspect(Recommendation recommended) {
    return new Inspection(machine, vise, guards.all(), regions, recommended);
  }

  /**
   * Every turn and mount in which bolts line up, turns in order of preference, then mounts in input
   * order; without clamps and without mounts that need a blank column.
   */
  public List<Bolted> bolted() {
    return regions.stream()
        .filter(region -> region.thread().isPresent())
        .map(
            region ->
                new Bolted(
                    region.turn(),
                    region.mountIndex(),
                    region.mount().orElseThrow().name(),
                    region.thread().getAsLong(),
                    region.places().rectangles(),
                    region.parts()))
        .toList();
  }

  /** Each turn and mount that holds nowhere, the nearest to holding first. */
  public List<Miss> misses() {
    return new MissSearch(machine.settings(), machine.machine(), vise.vise()).misses();
  }

  /** The largest number of vises of this kind that stand side by side on one table. */
  public SideBySide sideBySide() {
    return new SideBySideSearch(machine.settings(), machine.machine(), vise.vise()).most(regions);
  }

  /** The riser heights at which raising the vise can begin to help, ascending. */
  public SortedSet<Long> risersToTry() {
    return AmountCandidates.risers(regions);
  }

  /** The amounts by which moving {@code guard} along an axis can begin to help, ascending. */
  public SortedSet<Long> movesToTry(Guard guard, Axis axis, boolean up) {
    return axis == Axis.Z
        ? AmountCandidates.lifts(regions, guard)
        : AmountCandidates.moves(regions, vise.vise().opening(), guard, axis, up);
  }

  /** Describes the chosen placement for reports. */
  public Description description() {
    return new Description(machine, vise, guards.all());
  }

  public List<Region> regions() {
    return regions;
  }

  VerdictRule judgement() {
    return VerdictRule.of(machine, vise, regions);
  }

  private BestPlace places() {
    return BestPlace.over(regions, machine, vise, vise.vise().opening());
  }
}
