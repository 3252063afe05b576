package org.jawroom.placement.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Predicate;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.search.BestPlace;
import org.jawroom.placement.search.Candidate;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** Whether a set of vises stands on a machine, and where; pure. */
public final class SetPairing {
  private final PreparedMachine machine;
  private final Axis along;
  private final ViseSet set;
  private final List<SolvedPairing> pairings;

  private SetPairing(PreparedMachine machine, ViseSet set, List<SolvedPairing> pairings) {
    this.machine = machine;
    this.along = machine.machine().slots().direction();
    this.set = set;
    this.pairings = List.copyOf(pairings);
  }

  /** The outcome of {@code set} on {@code machine}. */
  public static SetOutcome solve(Settings settings, Machine machine, ViseSet set) {
    PreparedMachine prepared = PreparedMachine.of(settings, machine, Setup.PLAIN);
    return solve(
        prepared,
        set,
        set.members().stream()
            .map(ViseSet.Member::vise)
            .map(vise -> SolvedPairing.of(prepared, PreparedVise.on(prepared, vise)))
            .toList());
  }

  /**
   * The same for pairings solved already.
   *
   * @param pairings of each kind alone on the machine, in the order of the members
   */
  public static SetOutcome solve(
      PreparedMachine machine, ViseSet set, List<SolvedPairing> pairings) {
    return new SetPairing(machine, set, pairings).solved();
  }

  private SetOutcome solved() {
    Optional<RowSearch.Row> row =
        search(pairings.stream().map(SolvedPairing::model).toList()).best();
    if (row.isPresent()) {
      long least = row.get().least();
      return new SetOutcome(
          set,
          machine.machine(),
          SetOutcome.Fits.YES,
          least < Length.ENDLESS ? OptionalLong.of(least) : OptionalLong.empty(),
          stands(row.get()),
          List.of());
    }
    List<SetOutcome.Hindrance> hindrances = hindrances();
    return new SetOutcome(
        set,
        machine.machine(),
        hindrances.isEmpty() ? SetOutcome.Fits.UNKNOWN : SetOutcome.Fits.NO,
        OptionalLong.empty(),
        List.of(),
        hindrances);
  }

  /** What keeps it from fitting even with open readings at best; empty if nothing does. */
  private List<SetOutcome.Hindrance> hindrances() {
    List<Model> best = pairings.stream().map(SolvedPairing::model).map(SetPairing::atBest).toList();
    List<SetOutcome.Hindrance> hindrances = new ArrayList<>();
    add(SetOutcome.Hindrance.Kind.NO_MOUNT, best, model -> !model.hasPlaces(), hindrances);
    add(
        SetOutcome.Hindrance.Kind.NO_PLACE,
        best,
        model -> model.hasPlaces() && !model.isClear(),
        hindrances);
    if (hindrances.isEmpty() && !search(best).exists()) {
      hindrances.add(new SetOutcome.Hindrance(SetOutcome.Hindrance.Kind.SIDE_BY_SIDE, List.of()));
    }
    return hindrances;
  }

  private static Model atBest(Model model) {
    return model.isOpen() ? model.atBest() : model;
  }

  private void add(
      SetOutcome.Hindrance.Kind kind,
      List<Model> models,
      Predicate<Model> hinders,
      List<SetOutcome.Hindrance> into) {
    List<Vise> vises = new ArrayList<>();
    for (int i = 0; i < models.size(); i++) {
      if (hinders.test(models.get(i))) {
        vises.add(set.members().get(i).vise());
      }
    }
    if (!vises.isEmpty()) {
      into.add(new SetOutcome.Hindrance(kind, vises));
    }
  }

  private RowSearch search(List<Model> models) {
    List<Footing> footings = new ArrayList<>();
    int[] counts = set.members().stream().mapToInt(ViseSet.Member::count).toArray();
    for (boolean clamped : new boolean[] {false, true}) {
      for (int kind = 0; kind < models.size(); kind++) {
        Vise vise = set.members().get(kind).vise();
        for (Region region : models.get(kind).regions()) {
          if (region.fastening().clamped() == clamped) {
            Optional<Footing> footing = Footing.of(kind, region, vise.opening(), along);
            footing.ifPresent(footings::add);
            if (footing.isEmpty() && region.space(vise.opening()).isClear(0, Window.EVERYWHERE)) {
              // At best, a vise of which nothing is known stands in nobody's way.
              counts[kind] = 0;
            }
          }
        }
      }
    }
    return new RowSearch(footings, counts, machine.settings().spacing());
  }

  private List<SetOutcome.Stand> stands(RowSearch.Row found) {
    List<RowSearch.Stand> row = found.stands();
    List<SetOutcome.Stand> stands = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      Footing footing = row.get(i).footing();
      SolvedPairing pairing = pairings.get(footing.kind());
      Place place = place(row.get(i), pairing.outcome().vise(), found.least());
      stands.add(
          new SetOutcome.Stand(
              pairing,
              footing.all().plus(row.get(i).position()),
              Inspection.at(pairing.model(), footing.region(), place),
              i + 1 < row.size()
                  ? OptionalLong.of(gap(row.get(i), row.get(i + 1)))
                  : OptionalLong.empty(),
              hasHandRoom(
                  pairing.model(), footing.region(), pairing.outcome().vise().opening(), place)));
    }
    return stands;
  }

  private static boolean hasHandRoom(Model model, Region region, Interval opening, Place place) {
    Region withHandRoom = model.regionsWithHandRoom().get(model.regions().indexOf(region));
    return withHandRoom.field(opening).margin(place.x(), place.y()) >= 0;
  }

  private static long gap(RowSearch.Stand left, RowSearch.Stand right) {
    return right.position() - left.position() - left.footing().touching(right.footing());
  }

  /** The recommended place at a position along the slots among those with the least margin. */
  private Place place(RowSearch.Stand stand, Vise vise, long least) {
    Interval position = Interval.of(stand.position(), stand.position());
    return Candidate.of(
            stand.footing().region(), machine, PreparedVise.on(machine, vise), vise.opening())
        .within(Rectangle.of(along, position, Interval.ALL))
        .map(line -> new BestPlace(List.of(line)).recommended(least).place())
        .orElseThrow();
  }
}
