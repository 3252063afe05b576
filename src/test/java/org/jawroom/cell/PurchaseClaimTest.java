package org.jawroom.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.plan.Planner;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Purchase;
import org.jawroom.plan.model.Unheld;
import org.jawroom.plan.model.Wishes;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Verifies a plan's claims about purchases on random shops: each purchase is added to the tables,
 * which are read and solved again, and no cheaper single purchase may do it. A failure prints the
 * shop as tables.
 */
class PurchaseClaimTest {
  /** {@code -Dpurchases.seeds=200} tries more. */
  private static final int SHOPS = Integer.getInteger("purchases.seeds", 8);

  private static final Map<List<Object>, CellPairing> BARE = new HashMap<>();
  private static final Map<List<Object>, JobOutcome> JOBS = new HashMap<>();

  private static int bought;
  private static int remedied;
  private static int refuted;

  @TempDir private Path folder;
  private int tried;

  static LongStream seeds() {
    return LongStream.range(0, SHOPS);
  }

  /** The shops must exercise the claims. */
  @AfterAll
  static void enoughWasClaimed() {
    assertTrue(bought >= 2, () -> "plans that buy: " + bought);
    assertTrue(remedied >= 3, () -> "jobs that a purchase would hold: " + remedied);
    assertTrue(refuted >= 10, () -> "cheaper things tried: " + refuted);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void planThatBuys_withItsPurchasesInTheTables_holdsTheSame(long seed) throws Exception {
    Shop shop = shop(seed);
    Plan plan = plan(shop, Wishes.none().withBuying(OptionalLong.empty()));

    assertTrue(plan.isProven(), () -> ShopCsv.text(shop));
    long pieces = pieces(shop, plan);
    if (!plan.purchases().isEmpty()) {
      bought++;
      Plan after = plan(with(shop, plan.purchases()), Wishes.none());
      assertEquals(pieces, pieces(shop, after), () -> ShopCsv.text(shop));
      assertEquals(sum(shop, plan.purchases()), plan.cost(), () -> ShopCsv.text(shop));
    }
    for (Purchase cheaper : cheaperThan(shop, plan.cost())) {
      refuted++;
      Plan after = plan(with(shop, List.of(cheaper)), Wishes.none());
      assertTrue(pieces(shop, after) < pieces, () -> cheaper + "\n" + ShopCsv.text(shop));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void remedyOfAJob_withItsPurchasesInTheTables_holdsItBesideTheOthers(long seed) throws Exception {
    Shop shop = shop(seed);
    Plan plan = plan(shop, Wishes.none());

    for (Unheld unheld : plan.unheld()) {
      assertTrue(unheld.proven(), () -> ShopCsv.text(shop));
      Shop wanted = withJobs(shop, plan.held(), unheld.job());
      assertFalse(holdsAll(wanted), () -> ShopCsv.text(shop));
      if (unheld.remedy() == Unheld.Remedy.BUY) {
        remedied++;
        assertTrue(
            holdsAll(with(wanted, unheld.purchases())), () -> unheld + "\n" + ShopCsv.text(shop));
        assertEquals(sum(shop, unheld.purchases()), unheld.cost(), () -> ShopCsv.text(shop));
      }
      long below = unheld.remedy() == Unheld.Remedy.BUY ? unheld.cost() : Long.MAX_VALUE;
      for (Purchase cheaper : cheaperThan(shop, below)) {
        refuted++;
        assertFalse(
            holdsAll(with(wanted, List.of(cheaper))),
            () -> cheaper + " instead of " + unheld + "\n" + ShopCsv.text(shop));
      }
    }
  }

  /**
   * The first shop of this seed whose tables the reader accepts; others have slots off the table.
   */
  private Shop shop(long seed) throws IOException, UnreadableInput {
    List<Profile> profiles = List.of(Profile.COARSE, Profile.FEW_GUARDS, Profile.SQUEEZED);
    Profile profile = profiles.get((int) (seed % profiles.size()));
    for (long more = seed; ; more += 1_000_000) {
      Shop shop = RandomCell.shop(profile, more);
      if (read(shop).faults().isEmpty()) {
        return shop;
      }
    }
  }

  private Reading read(Shop shop) throws IOException, UnreadableInput {
    Path tables = Files.createDirectory(folder.resolve("tables " + tried++));
    for (Map.Entry<String, String> file : ShopCsv.files(shop).entrySet()) {
      Files.writeString(tables.resolve(file.getKey()), file.getValue());
    }
    return ShopReader.read(tables, Map.of());
  }

  /** Writes the tables, reads them and plans. */
  private Plan plan(Shop shop, Wishes wishes) throws IOException, UnreadableInput {
    Reading reading = read(shop);
    assertEquals(List.of(), reading.faults());
    Shop read =
        ShopCell.planned(reading.shop().orElseThrow(), reading.shop().orElseThrow().machines());
    List<CellPairing> pairings = new ArrayList<>();
    for (Machine machine : read.machines()) {
      for (Vise vise : read.vises()) {
        pairings.add(solved(read, machine, vise));
      }
    }
    return Planner.plan(ShopCell.of(read, pairings).cell(), wishes);
  }

  /** Status, price and quantity do not affect a pairing, so its solution is cached. */
  private CellPairing solved(Shop read, Machine machine, Vise vise) {
    Machine mill = RandomCell.machine(machine, machine.name(), false, Optional.empty());
    Vise kind = RandomCell.vise(vise, vise.name(), 1, Optional.empty());
    CellPairing bare =
        BARE.computeIfAbsent(
            List.of(read.settings(), mill, kind),
            key -> CellPairing.solve(read.settings(), mill, kind, List.of()));
    List<JobOutcome> jobs =
        read.jobs().stream()
            .map(
                job ->
                    JOBS.computeIfAbsent(
                        List.of(read.settings(), mill, kind, job),
                        key -> JobPairing.solve(read.settings(), mill, kind, job)))
            .toList();
    return new CellPairing(bare.outcome(), bare.sideBySide(), jobs);
  }

  private boolean holdsAll(Shop shop) throws IOException, UnreadableInput {
    return plan(shop, Wishes.none()).held().size() == shop.jobs().size();
  }

  private static long pieces(Shop shop, Plan plan) {
    return plan.held().stream().mapToLong(job -> shop.jobs().get(job).quantity()).sum();
  }

  private static Shop with(Shop shop, List<Purchase> purchases) {
    List<Machine> machines = new ArrayList<>(shop.machines());
    List<Vise> vises = new ArrayList<>(shop.vises());
    for (Purchase one : purchases) {
      if (one.what() == Purchase.What.VISE) {
        Vise vise = vises.get(one.index());
        vises.set(
            one.index(),
            RandomCell.vise(vise, vise.name(), vise.quantity() + one.count(), vise.price()));
      } else {
        Machine machine = machines.get(one.index());
        machines.set(
            one.index(), RandomCell.machine(machine, machine.name(), false, machine.price()));
      }
    }
    return new Shop(shop.settings(), machines, vises, shop.jobs());
  }

  private static Shop withJobs(Shop shop, List<Integer> held, int more) {
    List<Job> jobs = new ArrayList<>();
    held.forEach(job -> jobs.add(shop.jobs().get(job)));
    jobs.add(shop.jobs().get(more));
    return new Shop(shop.settings(), shop.machines(), shop.vises(), jobs);
  }

  /** Every single item for sale at a lower price. */
  private static List<Purchase> cheaperThan(Shop shop, long cost) {
    List<Purchase> things = new ArrayList<>();
    for (int vise = 0; vise < shop.vises().size(); vise++) {
      add(things, Purchase.What.VISE, vise, shop.vises().get(vise).price(), cost);
    }
    for (int machine = 0; machine < shop.machines().size(); machine++) {
      if (shop.machines().get(machine).candidate()) {
        add(things, Purchase.What.MACHINE, machine, shop.machines().get(machine).price(), cost);
      }
    }
    return things;
  }

  private static void add(
      List<Purchase> things, Purchase.What what, int index, Optional<BigDecimal> price, long cost) {
    price
        .map(ShopCell::coins)
        .filter(coins -> coins < cost)
        .ifPresent(coins -> things.add(new Purchase(what, index, 1, coins)));
  }

  /** In hundredths, by the prices in the tables. */
  private static long sum(Shop shop, List<Purchase> purchases) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Purchase one : purchases) {
      Optional<BigDecimal> price =
          one.what() == Purchase.What.VISE
              ? shop.vises().get(one.index()).price()
              : shop.machines().get(one.index()).price();
      sum = sum.add(price.orElseThrow().multiply(BigDecimal.valueOf(one.count())));
    }
    return sum.multiply(BigDecimal.valueOf(100)).longValueExact();
  }
}
