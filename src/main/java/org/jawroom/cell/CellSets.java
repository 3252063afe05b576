package org.jawroom.cell;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jawroom.clearance.Setup;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.PreparedVise;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.set.SetJobs;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.plan.model.Pick;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.vise.Vise;

/**
 * The sets of one vise each of several kinds that stand side by side on a machine.
 *
 * <p>A kind may be of a set if it {@code fits} or is {@code awkward} alone, with room over its
 * jaws: in a row it stands over its full opening, which a {@code limited} one cannot. The vises of
 * a set are all in stock or for sale, and not too heavy together, as far as masses are known.
 *
 * <p>Sets grow by one vise at a time, and only from sets that stand. That misses none: take a vise
 * out of a row, and the others stand where they stood, with the same margins, the same gaps between
 * every two of them, less weight and fewer vises used; so whatever is part of a set that stands
 * stands, too.
 */
public final class CellSets {

  /** The most kinds on a table. */
  public static final int MOST_KINDS = 4;

  private final Shop shop;
  private final int machineIndex;
  private final List<CellPairing> pairings;
  private final PreparedMachine machine;
  private final Map<Integer, SolvedPairing> solved = new HashMap<>();

  private CellSets(Shop shop, int machine, List<CellPairing> pairings) {
    this.shop = shop;
    this.machineIndex = machine;
    this.pairings = pairings;
    this.machine = PreparedMachine.of(shop.settings(), shop.machines().get(machine), Setup.PLAIN);
  }

  /**
   * The sets of 2 to {@code kinds} vises that stand on a machine, smaller ones first, then in the
   * order of the rows; pure.
   *
   * @param machine its index in the shop
   * @param pairings of that machine, in the order of the vises
   */
  public static List<CellSet> of(Shop shop, int machine, List<CellPairing> pairings, int kinds) {
    return new CellSets(shop, machine, pairings).all(kinds);
  }

  /** How many sets are tried on all machines of a shop at most. */
  public static long most(Shop shop, int kinds) {
    long vises = shop.vises().size();
    long most = 0;
    long chosen = vises;
    for (int kind = 2; kind <= kinds; kind++) {
      chosen = chosen * (vises - kind + 1) / kind;
      most += Math.max(0, chosen);
    }
    return most * shop.machines().size();
  }

  private List<CellSet> all(int kinds) {
    List<Integer> members = new ArrayList<>();
    for (int vise = 0; vise < pairings.size(); vise++) {
      if (pairings.get(vise).standsInRows()) {
        members.add(vise);
      }
    }
    List<CellSet> all = new ArrayList<>();
    List<List<Integer>> smaller = members.stream().map(List::of).toList();
    for (int count = 2; count <= kinds; count++) {
      Set<List<Integer>> standing = new HashSet<>(smaller);
      List<List<Integer>> larger = new ArrayList<>();
      for (List<Integer> some : smaller) {
        for (int vise : members) {
          if (vise > some.get(some.size() - 1)) {
            List<Integer> more = new ArrayList<>(some);
            more.add(vise);
            if (hasAllParts(more, standing) && mayStand(more)) {
              SetOutcome row = row(more);
              if (row.fits() == SetOutcome.Fits.YES) {
                larger.add(more);
                all.add(set(more, row));
              }
            }
          }
        }
      }
      smaller = larger;
    }
    return all;
  }

  /** Whether the set without any one of its vises is among those that stand. */
  private static boolean hasAllParts(List<Integer> set, Set<List<Integer>> standing) {
    for (int out = 0; out < set.size(); out++) {
      List<Integer> part = new ArrayList<>(set);
      part.remove(out);
      if (!standing.contains(part)) {
        return false;
      }
    }
    return true;
  }

  private boolean mayStand(List<Integer> set) {
    List<Vise> vises = set.stream().map(shop.vises()::get).toList();
    BigDecimal mass =
        vises.stream()
            .flatMap(vise -> vise.mass().stream())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    boolean isCarried =
        machine.machine().maxLoad().filter(load -> load.compareTo(mass) < 0).isEmpty();
    return isCarried && vises.stream().allMatch(vise -> isToBeHad(vise, vises));
  }

  /** Whether there are, or can be bought, as many of its row as the set has, turned or not. */
  private boolean isToBeHad(Vise vise, List<Vise> set) {
    Vise first =
        shop.vises().stream().filter(one -> one.row().equals(vise.row())).findFirst().orElseThrow();
    long used = set.stream().filter(one -> one.row().equals(vise.row())).count();
    return first.price().isPresent() || used <= first.quantity();
  }

  private SetOutcome row(List<Integer> set) {
    List<ViseSet.Member> members = new ArrayList<>();
    List<SolvedPairing> alone = new ArrayList<>();
    for (int vise : set) {
      members.add(new ViseSet.Member(shop.vises().get(vise), 1));
      alone.add(
          solved.computeIfAbsent(
              vise,
              index ->
                  SolvedPairing.of(machine, PreparedVise.on(machine, shop.vises().get(index)))));
    }
    String name = String.join(" + ", members.stream().map(member -> member.vise().name()).toList());
    return SetPairing.solve(machine, new ViseSet(name, members, List.of()), alone);
  }

  private CellSet set(List<Integer> set, SetOutcome row) {
    List<List<JobOutcome>> held = new ArrayList<>();
    for (int at = 0; at < row.stands().size(); at++) {
      int vise = shop.vises().indexOf(row.stands().get(at).vise());
      // What a vise holds in a row it holds alone as well: the place of the row is one of its own.
      List<Job> jobs = pairings.get(vise).held().stream().map(JobOutcome::job).toList();
      held.add(SetJobs.held(machine, row, at, jobs));
    }
    return new CellSet(new Pick(machineIndex, set), row, held);
  }
}
