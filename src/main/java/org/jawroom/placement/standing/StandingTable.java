package org.jawroom.placement.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.standing.StandingOutcome.Neighbour;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Standing;
import org.jawroom.shop.vise.Mount;

/**
 * Vises where they stand, each judged alone and then held against those on the same table; pure.
 *
 * <p>Between two vises there must be the setting {@code spacing}, as in a set. What counts are the
 * boxes that their parts sweep over the full opening in either situation, anywhere within the
 * tolerances of the measures; two handles may overlap, since one serves all vises. The gap between
 * two boxes is the larger along x and y or, where one is above the other, along z if that is larger
 * still. Exactly the spacing is enough.
 */
public final class StandingTable {

  /** A box that a part covers. */
  private record Covered(Box box, boolean handle) {}

  /**
   * What a vise covers.
   *
   * @param sure whether no reading of the vise is open
   */
  private record Ground(List<Covered> covered, boolean sure) {}

  private final Settings settings;

  private StandingTable(Settings settings) {
    this.settings = settings;
  }

  /** What is said of each vise, in the order given. */
  public static List<StandingOutcome> solve(Settings settings, List<Standing> standing) {
    List<StandingOutcome> alone =
        standing.stream().map(one -> StandingPairing.solve(settings, one)).toList();
    List<StandingOutcome> outcomes = new ArrayList<>();
    for (int index = 0; index < alone.size(); index++) {
      List<StandingOutcome> others = new ArrayList<>(alone);
      StandingOutcome one = others.remove(index);
      others.removeIf(other -> !shareTable(one.standing(), other.standing()));
      outcomes.add(beside(settings, one, others));
    }
    return outcomes;
  }

  /**
   * What is said of a vise.
   *
   * @param others that stand somewhere in the shop; those on other machines are left out
   */
  public static StandingOutcome solve(Settings settings, Standing standing, List<Standing> others) {
    return beside(
        settings,
        StandingPairing.solve(settings, standing),
        others.stream()
            .filter(other -> shareTable(standing, other))
            .map(other -> StandingPairing.solve(settings, other))
            .toList());
  }

  private static StandingOutcome beside(
      Settings settings, StandingOutcome one, List<StandingOutcome> others) {
    List<Standing> places = others.stream().map(StandingOutcome::standing).toList();
    return one.beside(others, new StandingTable(settings).close(one.standing(), places));
  }

  private static boolean shareTable(Standing one, Standing other) {
    return one.machine().name().equals(other.machine().name());
  }

  private List<Neighbour> close(Standing standing, List<Standing> others) {
    if (others.isEmpty()) {
      return List.of();
    }
    Ground ground = ground(standing);
    List<Neighbour> close = new ArrayList<>();
    for (Standing other : others) {
      Ground its = ground(other);
      long gap = gap(ground.covered(), its.covered());
      if (gap < settings.spacing()) {
        close.add(
            new Neighbour(
                other,
                Certainty.hasEnd(gap) ? OptionalLong.of(gap) : OptionalLong.empty(),
                ground.sure() && its.sure()));
      }
    }
    return close;
  }

  private static long gap(List<Covered> one, List<Covered> other) {
    long least = Length.ENDLESS;
    for (Covered mine : one) {
      for (Covered its : other) {
        if (!(mine.handle() && its.handle())) {
          least = Math.min(least, gap(mine.box(), its.box()));
        }
      }
    }
    return least;
  }

  /** Where heights meet, the two can only be moved apart along x or y. */
  private static long gap(Box one, Box other) {
    return one.z().gapTo(other.z()) < 0
        ? Math.max(one.x().gapTo(other.x()), one.y().gapTo(other.y()))
        : one.gapTo(other);
  }

  /** Of a mount that holds nowhere in that turn the bolts or clamps are not known. */
  private Ground ground(Standing standing) {
    PreparedMachine machine = PreparedMachine.of(settings, standing.machine(), Setup.PLAIN);
    PreparedVise vise = PreparedVise.on(machine, standing.vise());
    List<Part> parts =
        StandingPairing.mounted(standing, Model.of(machine, vise).regions())
            .map(Region::parts)
            .orElseGet(() -> vise.body().parts());
    Interval openings = standing.vise().opening();
    Orientation turn = standing.place().handleTo();
    return new Ground(
        parts.stream()
            .map(part -> part.grown(standing.tolerance()))
            .map(
                part ->
                    new Covered(
                        part.over(openings, turn).at(standing.x(), standing.y()), part.handle()))
            .toList(),
        vise.blanks().isEmpty() && standing.vise().mounts().stream().noneMatch(Mount::isOpen));
  }
}
