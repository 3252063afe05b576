package org.jawroom.cell;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.model.Pick;
import org.jawroom.plan.model.PlanMachine;
import org.jawroom.plan.model.ViseType;
import org.jawroom.plan.model.Work;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * A shop and its planning cell; machines, vises and jobs have the same indices in both.
 *
 * @param pairings machines, then vises, in shop order
 * @param kinds the most kinds of vise on a machine
 * @param sets of several kinds that stand side by side
 */
public record ShopCell(
    Shop shop, List<CellPairing> pairings, int kinds, Map<Pick, CellSet> sets, CellModel cell) {

  /** Decimal places of a price. */
  private static final int COINS = 2;

  public ShopCell {
    pairings = List.copyOf(pairings);
    sets = Map.copyOf(sets);
    if (pairings.size() != shop.machines().size() * shop.vises().size()) {
      throw new IllegalArgumentException(
          pairings.size()
              + " pairings for "
              + shop.machines().size()
              + " machines and "
              + shop.vises().size()
              + " vises");
    }
  }

  /**
   * The shop reduced to the given machines that can be part of a cell, and to jobs with a quantity.
   */
  public static Shop planned(Shop shop, List<Machine> machines) {
    return shop.withMachines(
            machines.stream()
                .filter(machine -> !machine.candidate() || machine.price().isPresent())
                .toList())
        .withJobs(shop.jobs().stream().filter(job -> job.quantity() > 0).toList());
  }

  /**
   * The cell of a {@link #planned} shop, with one kind of vise on a machine.
   *
   * @param pairings machines, then vises, in the order of {@code shop}
   */
  public static ShopCell of(Shop shop, List<CellPairing> pairings) {
    return of(shop, pairings, 1, List.of());
  }

  /**
   * The cell of a {@link #planned} shop.
   *
   * @param pairings machines, then vises, in the order of {@code shop}
   * @param kinds the most kinds on a machine
   * @param sets of up to so many kinds that stand side by side
   */
  public static ShopCell of(Shop shop, List<CellPairing> pairings, int kinds, List<CellSet> sets) {
    List<PlanMachine> machines =
        shop.machines().stream()
            .map(
                machine ->
                    new PlanMachine(
                        machine.name(),
                        machine.candidate() ? coins(machine.price()) : OptionalLong.empty()))
            .toList();
    List<ViseType> vises = shop.vises().stream().map(vise -> type(shop.vises(), vise)).toList();
    int across = vises.size();
    List<Fit> fits = new ArrayList<>();
    for (int index = 0; index < pairings.size(); index++) {
      CellPairing pairing = pairings.get(index);
      if (pairing.isChoice()) {
        fits.add(
            new Fit(
                new Pick(index / across, index % across),
                pairing.isGood(shop.settings()),
                pairing.most(),
                pairing.usableOpening(),
                shop.vises().get(index % across).jaws().width()));
      }
    }
    sets.forEach(set -> fits.add(set.fit(shop.settings())));
    return new ShopCell(
        shop,
        pairings,
        kinds,
        sets.stream().collect(Collectors.toMap(CellSet::pick, Function.identity())),
        new CellModel(machines, vises, fits, works(shop, pairings, sets)));
  }

  /**
   * A vise turned on its swivel base is the same piece of iron as the first of its row, which alone
   * has stock and price.
   */
  private static ViseType type(List<Vise> vises, Vise vise) {
    int first = vises.stream().map(Vise::row).toList().indexOf(vise.row());
    return vises.get(first).equals(vise)
        ? new ViseType(vise.name(), vise.quantity(), coins(vise.price()))
        : new ViseType(vise.name(), 0, OptionalLong.empty(), OptionalInt.of(first));
  }

  private static List<Work> works(Shop shop, List<CellPairing> pairings, List<CellSet> sets) {
    int across = shop.vises().size();
    List<Work> works = new ArrayList<>();
    for (int index = 0; index < shop.jobs().size(); index++) {
      Job job = shop.jobs().get(index);
      Set<Pick> heldBy = new HashSet<>();
      for (int pairing = 0; pairing < pairings.size(); pairing++) {
        if (pairings.get(pairing).isChoice() && pairings.get(pairing).jobs().get(index).isHeld()) {
          heldBy.add(new Pick(pairing / across, pairing % across));
        }
      }
      sets.stream()
          .filter(set -> !set.holding(job).isEmpty())
          .forEach(set -> heldBy.add(set.pick()));
      works.add(new Work(job.name(), job.quantity(), heldBy));
    }
    return works;
  }

  /**
   * The pairing that a pick of one kind refers to.
   *
   * @throws IllegalArgumentException for a pick of several kinds
   */
  public CellPairing at(Pick pick) {
    if (!pick.isOfOneKind()) {
      throw new IllegalArgumentException("several kinds: " + pick);
    }
    return pairings.get(pick.machine() * shop.vises().size() + pick.vises().get(0));
  }

  /** The outcomes of a job on the vises of a pick that hold it. */
  List<JobOutcome> holding(Pick pick, int job) {
    return pick.isOfOneKind()
        ? Stream.of(at(pick).jobs().get(job)).filter(JobOutcome::isHeld).toList()
        : sets.get(pick).holding(shop.jobs().get(job));
  }

  /** The blank columns to measure to decide a job that no pairing is known to hold. */
  public Set<String> unknownOf(int job) {
    Set<String> columns = new TreeSet<>();
    pairings.forEach(
        pairing -> pairing.jobs().get(job).missing().forEach(column -> columns.add(column.path())));
    return columns;
  }

  private static OptionalLong coins(Optional<BigDecimal> price) {
    return price.map(amount -> OptionalLong.of(coins(amount))).orElseGet(OptionalLong::empty);
  }

  /**
   * An amount of money in whole hundredths.
   *
   * @throws ArithmeticException if it has more than two decimal places
   */
  public static long coins(BigDecimal amount) {
    return amount.movePointRight(COINS).longValueExact();
  }

  /** Whole hundredths as an amount, without superfluous decimals: {@code 28500}, {@code 12.50}. */
  public static String money(long coins) {
    BigDecimal amount = BigDecimal.valueOf(coins, COINS);
    return (coins % 100 == 0 ? amount.setScale(0) : amount).toPlainString();
  }
}
