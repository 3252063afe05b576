package org.jawroom.placement;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.MachineGuards;
import org.jawroom.clearance.Part;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.SweptGuards;
import org.jawroom.clearance.SweptParts;
import org.jawroom.clearance.ViseParts;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.Column;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/**
 * A pairing under a setup, taken apart into regions and ready to be asked. Whatever needs a blank
 * column is left out, which is never worse than the truth.
 */
public final class Model {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final SweptParts body;
  private final MachineGuards guards;
  private final List<Region> regions;
  private final List<Column> blanks;

  private Model(
      Settings settings,
      Machine machine,
      Vise vise,
      SweptParts body,
      MachineGuards guards,
      List<Region> regions,
      List<Column> blanks) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.body = body;
    this.guards = guards;
    this.regions = regions;
    this.blanks = blanks;
  }

  public static Model of(Settings settings, Machine machine, Vise vise, Setup setup) {
    Blanks blanks = new Blanks();
    List<Part> body =
        ViseParts.of(vise, blanks).stream().map(part -> part.raised(setup.riser())).toList();
    long bedHeight = vise.base().bedHeight() + setup.riser();
    MachineGuards guards = MachineGuards.of(settings, machine, setup, bedHeight, blanks);
    SweptParts swept = SweptParts.of(body, vise.opening());
    SweptGuards sorted = SweptGuards.of(guards.swept(), settings.handRoom());
    List<Region> regions = Regions.of(settings, machine, setup, vise, swept, sorted, blanks);
    return new Model(settings, machine, vise, swept, guards, regions, blanks.columns());
  }

  /**
   * The same with strap clamps in place of every bolt; no place at all for a vise without a known
   * base.
   */
  public Model clamped() {
    SweptGuards sorted = SweptGuards.of(guards.swept(), settings.handRoom());
    List<Region> clamps = ClampRegions.of(settings, machine, vise, body, sorted);
    return new Model(settings, machine, vise, body, guards, clamps, blanks);
  }

  /** The blank columns that it needs, once each, in the order of the tables. */
  public List<Column> blanks() {
    return blanks;
  }

  /** Whether bolts line up anywhere. */
  public boolean hasPlaces() {
    return !regions.isEmpty();
  }

  /** Whether some place has margin ≥ 0 over the full opening range. */
  public boolean fits() {
    return places().isClear();
  }

  /**
   * The place with the largest margin over the full opening range, whatever the spindle reaches.
   */
  public Optional<Roomiest> roomiest() {
    return regions.isEmpty() ? Optional.empty() : Optional.of(Roomiest.of(places()));
  }

  /** A closer look at {@code recommended}, which must be this model's own. */
  public Inspection inspect(Recommendation recommended) {
    return new Inspection(machine, vise, guards, regions, recommended);
  }

  /**
   * Every turn and mount in which bolts line up, turns in order of preference, then mounts in input
   * order; without those that a blank leaves open, and without clamps.
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
                    region.places(),
                    region.parts()))
        .toList();
  }

  /** Each turn and mount that holds nowhere, the nearest to holding first. */
  public List<Miss> misses() {
    return new MissSearch(settings, machine, vise).misses();
  }

  /** The most vises of this kind that stand on one table side by side. */
  public SideBySide sideBySide() {
    return new SideBySideSearch(settings, machine, vise).most(regions);
  }

  /** The heights of riser at which raising the vise can begin to help, rising. */
  public SortedSet<Long> risersToTry() {
    return Candidates.risers(regions);
  }

  /** How far {@code guard} must be moved along an axis for that to begin to help, rising. */
  public SortedSet<Long> movesToTry(String guard, Axis axis, boolean up) {
    return axis == Axis.Z
        ? Candidates.lifts(regions, guard)
        : Candidates.moves(regions, vise.opening(), guard, axis, up);
  }

  MachineGuards guards() {
    return guards;
  }

  List<Region> regions() {
    return regions;
  }

  Judgement judgement() {
    return Judgement.of(settings, machine, vise, regions);
  }

  private BestPlace places() {
    return new BestPlace(
        regions.stream().map(region -> Seat.of(region, machine, vise, vise.opening())).toList());
  }
}
