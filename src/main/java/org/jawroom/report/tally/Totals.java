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
 * Statistics of a block of a shop's pairings, or of all, accumulated pairing by pairing or block by
 * block; memory grows with the number of machines and vises, not of pairings.
 */
public final class Totals {
  private final Shop shop;
  private final ShopBlock block;
  private final JobTotals jobs;
  private final List<Tally> machines = new ArrayList<>();
  private final List<Tally> vises = new ArrayList<>();
  private final Worst worst = new Worst();
  private final ShortTools shortTools = new ShortTools();
  private long pairings;

  /**
   * Starts without any pairing of a shop.
   *
   * @param detailed whether to keep the best outcome of each job on each machine
   */
  public Totals(Shop shop, boolean detailed) {
    this(shop, detailed, ShopBlock.of(shop));
  }

  /** The same for the pairings of one block. */
  public Totals(Shop shop, boolean detailed, ShopBlock block) {
    this.shop = shop;
    this.block = block;
    this.jobs = new JobTotals(shop, detailed, block);
    for (int machine = 0; machine < block.machines(); machine++) {
      machines.add(new Tally(PairingMerit.OF_VISES));
    }
    for (int vise = 0; vise < block.vises(); vise++) {
      vises.add(new Tally(PairingMerit.OF_MACHINES));
    }
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
   * Adds the next pairing of the block.
   *
   * @param ofJobs the outcome of each job of the shop on it, in order
   * @throws IllegalArgumentException if it is not the next one: machines, then vises, in shop order
   */
  public void add(Advice pairing, List<JobOutcome> ofJobs) {
    Outcome outcome = pairing.outcome();
    if (pairings >= block.pairings()) {
      throw new IllegalArgumentException("more than " + pairings + " pairings");
    }
    int machine = block.machine() + (int) (pairings / block.vises());
    int vise = block.vise() + (int) (pairings % block.vises());
    if (!outcome.machine().name().equals(shop.machines().get(machine).name())
        || !outcome.vise().name().equals(shop.vises().get(vise).name())) {
      throw new IllegalArgumentException("unexpected pairing at index " + pairings);
    }
    long index = (long) machine * shop.vises().size() + vise;
    Finding finding = Finding.of(outcome);
    Optional<PairingMerit> merit =
        PairingMerit.of(shop.settings(), outcome, JobMerit.pieces(ofJobs));
    machine(machine).add(index, pairing, finding, merit);
    vise(vise).add(index, pairing, finding, merit);
    jobs.add(machine, ofJobs);
    worst.add(index, outcome);
    shortTools.add(index, outcome);
    pairings++;
  }

  /**
   * Adds the totals of a block of these pairings. Of each machine the vises must come in order, of
   * each vise the machines: of equally good ones the first counts.
   */
  public void add(Totals others) {
    for (int machine = others.block.machine(); machine < others.block.endOfMachines(); machine++) {
      machine(machine).add(others.machine(machine));
    }
    for (int vise = others.block.vise(); vise < others.block.endOfVises(); vise++) {
      vise(vise).add(others.vise(vise));
    }
    jobs.add(others.jobs);
    worst.add(others.worst);
    shortTools.add(others.shortTools);
    pairings += others.pairings;
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

  /** The tally of all pairings, summed up now. */
  public Tally all() {
    Tally all = new Tally(PairingMerit.OF_VISES);
    machines.forEach(all::add);
    return all;
  }

  /** The tally of the machine with that index. */
  public Tally machine(int index) {
    return machines.get(index - block.machine());
  }

  /** The tally of the vise with that index. */
  public Tally vise(int index) {
    return vises.get(index - block.vise());
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

  public ShortTools shortTools() {
    return shortTools;
  }
}
