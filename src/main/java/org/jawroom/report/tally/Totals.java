package org.jawroom.report.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jawroom.advice.Advice;
import org.jawroom.advice.merit.JobMerit;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.wording.Finding;
import org.jawroom.shop.Shop;

/**
 * Statistics of a whole shop, accumulated pairing by pairing; memory grows with the number of
 * machines and vises, not of pairings.
 */
public final class Totals {
  private final Shop shop;
  private final JobTotals jobs;
  private final Tally all;
  private final List<Tally> machines = new ArrayList<>();
  private final List<Tally> vises = new ArrayList<>();
  private final Worst worst = new Worst();
  private long pairings;

  /**
   * Starts without any pairing.
   *
   * @param detailed whether to keep the best outcome of each job on each machine
   */
  public Totals(Shop shop, boolean detailed) {
    this.shop = shop;
    this.jobs = new JobTotals(shop, detailed);
    this.all = new Tally(PairingMerit.OF_VISES);
    shop.machines().forEach(machine -> machines.add(new Tally(PairingMerit.OF_VISES)));
    shop.vises().forEach(vise -> vises.add(new Tally(PairingMerit.OF_MACHINES)));
  }

  /**
   * Sums up all pairings of a shop: machines, then vises, in shop order.
   *
   * @param jobs one outcome for each job and pairing: jobs, then machines, then vises
   */
  public static Totals of(Shop shop, List<Advice> advice, List<JobOutcome> jobs) {
    Totals totals = new Totals(shop, true);
    int pairings = advice.size();
    for (int i = 0; i < pairings; i++) {
      List<JobOutcome> ofPairing = new ArrayList<>();
      for (int job = i; job < jobs.size(); job += pairings) {
        ofPairing.add(jobs.get(job));
      }
      totals.add(advice.get(i), ofPairing);
    }
    return totals;
  }

  /**
   * Adds the next pairing.
   *
   * @param ofJobs the outcome of each job of the shop on it, in order
   * @throws IllegalArgumentException if it is not the next pairing in shop order
   */
  public void add(Advice pairing, List<JobOutcome> ofJobs) {
    Outcome outcome = pairing.outcome();
    int across = shop.vises().size();
    int machine = across == 0 ? 0 : (int) (pairings / across);
    int vise = across == 0 ? 0 : (int) (pairings % across);
    if (machine >= machines.size()
        || !outcome.machine().name().equals(shop.machines().get(machine).name())
        || !outcome.vise().name().equals(shop.vises().get(vise).name())) {
      throw new IllegalArgumentException("unexpected pairing at index " + pairings);
    }
    jobs.add(machine, ofJobs);
    Finding finding = Finding.of(outcome);
    Optional<PairingMerit> merit =
        PairingMerit.of(shop.settings(), outcome, JobMerit.pieces(ofJobs));
    for (Tally tally : List.of(all, machines.get(machine), vises.get(vise))) {
      tally.add(pairings, pairing, finding, merit);
    }
    worst.add(outcome);
    pairings++;
  }

  public Shop shop() {
    return shop;
  }

  public JobTotals jobs() {
    return jobs;
  }

  /** The number of pairings added. */
  public long pairings() {
    return pairings;
  }

  public Tally all() {
    return all;
  }

  /** The tally of the machine with that index. */
  public Tally machine(int index) {
    return machines.get(index);
  }

  /** The tally of the vise with that index. */
  public Tally vise(int index) {
    return vises.get(index);
  }

  /** The best pairing of each machine and of each vise, without duplicates, in input order. */
  public List<Advice> chosen() {
    Map<Long, Advice> chosen = new TreeMap<>();
    for (List<Tally> groups : List.of(machines, vises)) {
      groups.forEach(tally -> tally.best().ifPresent(b -> chosen.put(tally.bestIndex(), b)));
    }
    return List.copyOf(chosen.values());
  }

  public Worst worst() {
    return worst;
  }
}
