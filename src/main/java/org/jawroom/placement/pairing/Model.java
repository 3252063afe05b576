package org.jawroom.placement.pairing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.guard.MachineGuards;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.placement.bolting.MissSearch;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.bolting.Regions;
import org.jawroom.placement.search.BestPlace;
import org.jawroom.placement.search.Bolted;
import org.jawroom.placement.search.Description;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.search.SideBySideSearch;
import org.jawroom.placement.space.Strips;
import org.jawroom.placement.space.Window;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Vise;

/**
 * A pairing under a setup, decomposed into regions and ready for queries, its open readings taken
 * at worst or at best.
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
    return of(prepared, PreparedVise.on(prepared, vise));
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
        : of(prepared, PreparedVise.on(prepared, vise.vise()));
  }

  /** A changed vise on the same machine. */
  public Model with(Vise changed) {
    return of(machine, PreparedVise.on(machine, changed));
  }

  public static Model of(PreparedMachine machine, PreparedVise vise) {
    PreparedMachine.Guards guards = machine.guards(vise.bedHeight());
    Blanks blanks = new Blanks();
    blanks.add(vise.blanks());
    blanks.add(guards.blanks());
    List<Region> regions = Regions.of(machine, vise, guards.sorted(), blanks);
    return new Model(machine, vise, guards, regions, blanks.columns());
  }

  /** The same with open readings at best. */
  public Model atBest() {
    PreparedMachine best = machine.atBest();
    return of(best, vise.atBest());
  }

  /** The same turned vise with its jaws kept to some openings; see {@link Vise#within}. */
  public Model within(Interval openings) {
    return of(machine, vise.within(openings));
  }

  /** Whether it needs an open reading. */
  public boolean isOpen() {
    return !blanks.isEmpty();
  }

  /** The columns of the open readings it needs, without duplicates, in table order. */
  public List<Column> blanks() {
    return blanks;
  }

  /** Whether bolts or clamps hold the vise anywhere. */
  public boolean hasPlaces() {
    return !regions.isEmpty();
  }

  /** Whether some position has margin ≥ 0 over the full opening range, without hand room. */
  public boolean isClear() {
    return isClear(regions);
  }

  /** Whether some position has margin ≥ 0 over the full opening range, with hand room. */
  public boolean isClearWithHandRoom() {
    return isClear(regionsWithHandRoom());
  }

  /** Whether some position has margin ≥ 0 over some openings, without hand room. */
  boolean isClear(Interval openings) {
    return BestPlace.belowZero(regions, machine, vise, openings).isClear();
  }

  /** Whether some settable position has. */
  boolean isSettable(Interval openings) {
    return regions.stream()
        .flatMap(region -> region.settableSpace(machine, openings).stream())
        .anyMatch(space -> space.isClear(0, Window.EVERYWHERE));
  }

  private boolean isClear(List<Region> held) {
    return BestPlace.belowZero(held, machine, vise, vise.vise().opening()).isClear();
  }

  /**
   * The placement with the largest margin over the full opening range, without hand room and
   * regardless of the spindle's reach.
   */
  public Optional<Roomiest> roomiest() {
    return roomiest(regions);
  }

  /** The same with hand room. */
  public Optional<Roomiest> roomiestWithHandRoom() {
    return roomiest(regionsWithHandRoom());
  }

  private Optional<Roomiest> roomiest(List<Region> held) {
    return held.isEmpty()
        ? Optional.empty()
        : Optional.of(Roomiest.of(BestPlace.over(held, machine, vise, vise.vise().opening())));
  }

  /** {@link #regions} with hand room round the handle while loading. */
  public List<Region> regionsWithHandRoom() {
    return VerdictRule.withHandRoom(regions, guards);
  }

  /** Whether guards that move along z are left out while cutting, for want of a shortest tool. */
  boolean leavesHeadsOut() {
    return machine.settings().shortestTool().isEmpty() && !guards.all().withNose().isEmpty();
  }

  /**
   * Every turn and mount in which bolts or clamps hold, turns in order of preference, then mounts
   * in input order, clamps last; without mounts that need a blank column.
   */
  public List<Bolted> bolted() {
    return regions.stream()
        .filter(region -> region.fastening().anchors().isPresent())
        .map(
            region ->
                new Bolted(
                    region.turn(),
                    region.fastening(),
                    region.places().rectangles(),
                    region.settable(machine).map(Strips::rectangles).orElse(List.of()),
                    region.parts()))
        .toList();
  }

  /** Each turn and mount that holds nowhere, the nearest to holding first. */
  public List<Miss> misses() {
    return new MissSearch(machine, vise.vise()).misses();
  }

  SideBySide sideBySide(List<Region> held, long shortfall) {
    return new SideBySideSearch(machine, vise).most(held, shortfall);
  }

  /** Describes the chosen placement for reports. */
  public Description description() {
    return new Description(machine, vise, guards.all());
  }

  /** One region for each turn and mount that hold, without hand room. */
  public List<Region> regions() {
    return regions;
  }

  PreparedMachine machine() {
    return machine;
  }

  PreparedVise vise() {
    return vise;
  }

  MachineGuards guards() {
    return guards.all();
  }

  /** The best margin over the full opening range without hand room; empty if it mounts nowhere. */
  OptionalLong bestMargin() {
    if (regions.isEmpty()) {
      return OptionalLong.empty();
    }
    return OptionalLong.of(
        BestPlace.over(regions, machine, vise, vise.vise().opening()).bestMargin());
  }

  /** The verdict if it is hopeless: neither clear, nor to be measured, nor limited. */
  Optional<Verdict> hopeless() {
    return VerdictRule.hopeless(machine, vise, regions)
        .filter(word -> word == Verdict.NO_MOUNT || TurnedOpening.of(this).isEmpty());
  }

  VerdictRule judgement() {
    return VerdictRule.of(machine, vise, guards, regions);
  }
}
