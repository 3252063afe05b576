package org.jawroom.cell;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
 */
public record ShopCell(Shop shop, List<CellPairing> pairings, CellModel cell) {

  /** Decimal places of a price. */
  private static final int COINS = 2;

  public ShopCell {
    pairings = List.copyOf(pairings);
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
   * The cell of a {@link #planned} shop.
   *
   * @param pairings machines, then vises, in the order of {@code shop}
   */
  public static ShopCell of(Shop shop, List<CellPairing> pairings) {
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
    return new ShopCell(
        shop, pairings, new CellModel(machines, vises, fits, works(shop, pairings, fits)));
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

  private static List<Work> works(Shop shop, List<CellPairing> pairings, List<Fit> fits) {
    int across = shop.vises().size();
    return IntStream.range(0, shop.jobs().size())
        .mapToObj(
            index -> {
              Job job = shop.jobs().get(index);
              Set<Pick> heldBy =
                  fits.stream()
                      .map(Fit::pick)
                      .filter(
                          pick ->
                              pairings
                                  .get(pick.machine() * across + pick.vises().get(0))
                                  .jobs()
                                  .get(index)
                                  .isHeld())
                      .collect(Collectors.toSet());
              return new Work(job.name(), job.quantity(), heldBy);
            })
        .toList();
  }

  /** The pairing that a pick refers to. */
  public CellPairing at(Pick pick) {
    return pairings.get(pick.machine() * shop.vises().size() + pick.vises().get(0));
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
