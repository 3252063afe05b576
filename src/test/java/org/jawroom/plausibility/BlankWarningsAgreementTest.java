package org.jawroom.plausibility;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.solve.ReferenceOutcome;
import org.jawroom.reference.solve.ReferencePairing;
import org.jawroom.shop.Shop;
import org.jawroom.shop.value.Column;
import org.junit.jupiter.api.Test;

/**
 * The columns that the warnings say make verdicts unknown, against those that the second solver
 * lists as missing.
 */
class BlankWarningsAgreementTest {
  private static final String BLANK = " open (blank or a range): every pairing ";

  @Test
  void blanks_ofUnknownPairings_areThoseTheSecondSolverMisses() {
    int unknown = 0;
    Set<String> seen = new TreeSet<>();
    for (RandomShops.Profile profile :
        List.of(
            RandomShops.Profile.BLANKS,
            RandomShops.Profile.BLANKS_OF_ALL_KINDS,
            RandomShops.Profile.BLANKS_WITHOUT_TOOL)) {
      for (long seed = 0; seed < 150; seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        ReferenceOutcome outcome =
            ReferencePairing.solve(
                shop.settings(), RandomShops.machine(shop), RandomShops.vise(shop));
        if (outcome.verdict() == Verdict.UNKNOWN) {
          String which = profile + " seed " + seed;
          Set<String> missing =
              outcome.missing().stream()
                  .map(Column::path)
                  .collect(Collectors.toCollection(TreeSet::new));
          assertEquals(missing, warned(shop), () -> which + "\n" + ShopCsv.text(shop));
          seen.addAll(missing);
          unknown++;
        }
      }
    }
    assertTrue(unknown > 100, "too few unknown pairings to prove anything: " + unknown);
    assertTrue(
        seen.containsAll(
            List.of("guards.gap", "machines.nose_min", "mounts.hole_u", "vises.handle_depth")),
        () -> "some kinds of blanks did not come up: " + seen);
  }

  /** The columns with their tables, as the lines name them. */
  private static Set<String> warned(Shop shop) {
    Set<String> paths = new TreeSet<>();
    for (Warning warning : Warnings.ofBlanks(shop)) {
      int end = warning.text().indexOf(BLANK);
      if (end >= 0) {
        for (String name : List.of(warning.text().substring(0, end).split(", "))) {
          String[] words = name.split(" of ", 2);
          paths.add((words.length == 2 ? "mounts" : warning.table()) + "." + words[0]);
        }
      }
    }
    return paths;
  }
}
