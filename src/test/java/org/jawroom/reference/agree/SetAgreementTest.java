package org.jawroom.reference.agree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetOutcome.Fits;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.random.RandomSets;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.reference.solve.RefSet;
import org.jawroom.reference.solve.RefSet.Hindered;
import org.jawroom.reference.solve.RefSet.Judged;
import org.jawroom.reference.solve.RefStand;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * Sets of vises on one table from the solver and from {@link RefSet}: whether they fit, the largest
 * least margin or gap, the first order that has it, every place printed and what keeps them from
 * fitting. {@code -Dsets.seeds=500} tries more seeds, {@code -Dsets.first=5000} others.
 */
class SetAgreementTest {
  private static final int SEEDS = Integer.getInteger("sets.seeds", 120);
  private static final long FIRST = Long.getLong("sets.first", 0);

  private final Map<String, Integer> met = new ConcurrentHashMap<>();

  @Test
  void solve_randomSets_asTheReferenceHasIt() {
    for (Profile profile : Profile.values()) {
      List<String> wrong =
          LongStream.range(FIRST, FIRST + AgreementTest.seeds(profile, SEEDS))
              .parallel()
              .mapToObj(seed -> wrong(profile, seed))
              .flatMap(Optional::stream)
              .toList();
      assertEquals(List.of(), wrong.stream().limit(1).toList(), () -> wrong.size() + " are wrong");
    }
    for (String seen :
        List.of(
            "YES",
            "YES of 2 or more",
            "YES of 3 or more",
            "YES along y",
            "YES on clamps",
            "YES in several turns",
            "YES with open readings",
            "YES at 0",
            "UNKNOWN",
            "NO_MOUNT",
            "NO_PLACE",
            "SIDE_BY_SIDE")) {
      assertTrue(met.getOrDefault(seen, 0) >= 5, () -> seen + " in " + new TreeMap<>(met));
    }
  }

  private Optional<String> wrong(Profile profile, long seed) {
    Shop shop = RandomSets.shop(profile, seed);
    String paste = profile + " seed " + seed + "\n" + ShopCsv.text(shop);
    Machine machine = RandomShops.machine(shop);
    ViseSet set = shop.sets().get(0);
    try {
      SetOutcome found = SetPairing.solve(shop.settings(), machine, set);
      RefSet reference = new RefSet(shop.settings(), machine, set);
      count(reference, found);
      String fault = fault(reference, found);
      return fault.isEmpty()
          ? Optional.empty()
          : Optional.of(fault + "; " + found.fits() + "; " + paste);
    } catch (RuntimeException e) {
      throw new AssertionError(paste, e);
    }
  }

  private static String fault(RefSet reference, SetOutcome found) {
    if (reference.fits() != found.fits()) {
      return "should be " + reference.fits();
    }
    return switch (found.fits()) {
      case YES -> faultOfRow(reference, found);
      case NO -> {
        List<Vise> vises = kinds(found);
        List<Hindered> hindered =
            found.hindrances().stream()
                .map(
                    one ->
                        new Hindered(one.kind(), one.vises().stream().map(vises::indexOf).toList()))
                .toList();
        yield hindered.equals(reference.hindrances())
            ? ""
            : "hindered by " + reference.hindrances() + ", not " + hindered;
      }
      case UNKNOWN -> "";
    };
  }

  private static String faultOfRow(RefSet reference, SetOutcome found) {
    List<Integer> order =
        found.stands().stream().map(stand -> kinds(found).indexOf(stand.vise())).toList();
    List<RefStand> stands = found.stands().stream().map(SetAgreementTest::stand).toList();
    Judged judged = reference.judge(order, stands);
    if (!judged.fault().isEmpty()) {
      return judged.fault() + ": " + stands;
    }
    long least = judged.least();
    OptionalLong reported =
        least == RefMargin.NO_LIMIT ? OptionalLong.empty() : OptionalLong.of(least);
    if (!found.least().equals(reported)) {
      return found.least() + " of a row with " + reported + ": " + stands;
    }
    if (reported.isPresent() && reference.rows().serves(least + 1)) {
      return reference.rows().least() + " is possible, not " + least;
    }
    List<Integer> first =
        reference.rows().firstOrder(Math.min(least, RefMargin.ENDLESS_ROOM)).orElseThrow();
    if (!first.equals(order)) {
      return "order " + order + ", but " + first + " serves";
    }
    List<Long> gaps =
        found.stands().stream().flatMap(stand -> stand.nextGap().stream().boxed()).toList();
    List<Boolean> handRoom = found.stands().stream().map(SetOutcome.Stand::handRoom).toList();
    return gaps.equals(judged.gaps()) && handRoom.equals(judged.handRoom())
        ? ""
        : judged + " with " + gaps + " " + handRoom;
  }

  private static List<Vise> kinds(SetOutcome found) {
    return found.set().members().stream().map(ViseSet.Member::vise).toList();
  }

  private static RefStand stand(SetOutcome.Stand stand) {
    Recommendation place = stand.place();
    return new RefStand(place.handleTo(), place.mount(), place.x(), place.y());
  }

  private void count(RefSet reference, SetOutcome found) {
    found.hindrances().forEach(one -> met(one.kind().name(), true));
    met(found.fits().name(), true);
    if (found.fits() == Fits.YES) {
      List<RefStand> stands = found.stands().stream().map(SetAgreementTest::stand).toList();
      met("YES of 2 or more", stands.size() >= 2);
      met("YES of 3 or more", stands.size() >= 3);
      met("YES along y", found.machine().slots().direction() == Axis.Y);
      met("YES on clamps", stands.stream().anyMatch(one -> one.mount().equals(Mount.CLAMPS)));
      met("YES in several turns", stands.stream().map(RefStand::turn).distinct().count() > 1);
      met("YES at 0", found.least().equals(OptionalLong.of(0)));
      boolean open = false;
      for (int kind = 0; kind < found.set().members().size(); kind++) {
        open |= !reference.rows().model(kind).missing.isEmpty();
      }
      met("YES with open readings", open);
    }
  }

  private void met(String what, boolean here) {
    met.merge(what, here ? 1 : 0, Integer::sum);
  }
}
