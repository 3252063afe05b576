package org.jawroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.Expectations;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.checks.expected.Terms;
import org.jawroom.checks.expected.Unknown;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Check;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.VisePart;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A reading typed into the tables changes an expected gap by its factor in the sum of readings: the
 * sums, the cells that stand for them, and the solver's own way from cell to box agree.
 */
class CorrectedReadingTest {
  private static final long STEP = Length.MM / 8;

  private static final List<Profile> PROFILES =
      List.of(
          Profile.PLAIN,
          Profile.CLUTTERED,
          Profile.OTHER_MOVES,
          Profile.LOAD_GIVEN,
          Profile.BOTH_JAWS,
          Profile.SHAPE_PARTS,
          Profile.EXTRA_MOUNTS,
          Profile.HANDLED);

  @TempDir private Path folder;

  /** How often each column was typed in. */
  private final Map<String, Integer> columns = new TreeMap<>();

  @Test
  void reading_typedIn_changesTheGapByItsFactor() throws Exception {
    for (Profile profile : PROFILES) {
      for (long seed = 0; seed < 6; seed++) {
        Path tables = write(RandomShops.shop(profile, seed), profile + "-" + seed);
        Reading read = ShopReader.read(tables, Map.of());
        // Some random shops have sizes that the reader refuses.
        if (read.shop().isPresent()) {
          hold(tables, read.shop().get(), profile + " seed " + seed);
        }
      }
    }
    for (String column :
        List.of(
            "machines.table_length",
            "machines.table_width",
            "machines.travel_x",
            "machines.travel_y",
            "machines.rear_gap",
            "machines.front_gap",
            "guards.gap",
            "guards.y_min",
            "vises.base_width",
            "vises.rear_reach",
            "vises.front_reach",
            "vises.moving_jaw_thickness",
            "vises.opening_max",
            "vises.opening_min",
            "vises.bolt_spacing",
            "vises.handle_radius",
            "vises.screw_diameter",
            "vises.jaw_width",
            "vise_parts.v_max",
            "mounts.u")) {
      assertTrue(columns.getOrDefault(column, 0) > 2, column + " " + columns);
    }
  }

  private void hold(Path tables, Shop shop, String where) throws Exception {
    Map<Measurand, Shop> corrected = new HashMap<>();
    for (Check check : checks(shop)) {
      Terms terms = new Terms();
      Optional<ExpectedGap> gap = new Expectations(shop.settings(), terms).of(check);
      if (gap.isEmpty()) {
        continue;
      }
      for (Unknown unknown : gap.get().form().terms().keySet()) {
        ValueRange written = terms.of(unknown);
        if (unknown instanceof Unknown.ReadingValue value && written.isSingle()) {
          Measurand reading = value.measurand();
          long length = written.lo().orElseThrow().floor() + STEP;
          if (!corrected.containsKey(reading)) {
            corrected.put(
                reading,
                ShopReader.corrected(tables, Map.of(), Map.of(reading, length), 0)
                    .shop()
                    .orElse(null));
          }
          if (corrected.get(reading) != null) {
            hold(gap.get(), terms, unknown, corrected.get(reading), where + ": " + reading);
          }
        }
      }
    }
  }

  private void hold(ExpectedGap gap, Terms terms, Unknown unknown, Shop other, String where) {
    Terms otherTerms = new Terms();
    Check again = of(other, gap.check());
    Optional<ExpectedGap> then = new Expectations(other.settings(), otherTerms).of(again);
    // Where another part, side, axis or limit comes to be the nearest, the sum is another one.
    if (then.isPresent()
        && then.get().axis() == gap.axis()
        && then.get().form().terms().equals(gap.form().terms())) {
      Rational change = otherTerms.nominal(then.get().form()).minus(terms.nominal(gap.form()));
      assertEquals(gap.form().terms().get(unknown).times(Rational.of(STEP)), change, where);
      Measurand reading = ((Unknown.ReadingValue) unknown).measurand();
      columns.merge(reading.table() + "." + reading.column(), 1, Integer::sum);
    }
  }

  private static List<Check> checks(Shop shop) {
    List<Check> checks = new ArrayList<>();
    List<String> parts = new ArrayList<>();
    for (PartRole role : PartRole.values()) {
      if (role != PartRole.ROW && role != PartRole.WORK) {
        parts.add(role.word());
      }
    }
    shop.vises().get(0).parts().stream().map(VisePart::name).forEach(parts::add);
    for (String part : parts) {
      for (Guard guard : shop.machines().get(0).guards()) {
        for (Check.Opening opening : List.of(Check.Opening.CLOSED, Check.Opening.OPEN)) {
          for (Axis axis : List.of(Axis.X, Axis.Y)) {
            checks.add(
                new Check(
                    shop.machines().get(0),
                    shop.vises().get(0),
                    opening.open() ? Orientation.RIGHT : Orientation.FRONT,
                    200 * Length.MM,
                    150 * Length.MM,
                    part,
                    Optional.of(guard),
                    opening,
                    true,
                    Optional.of(axis),
                    0,
                    new Provenance(0, false, "", "")));
          }
        }
      }
    }
    return checks;
  }

  private static Check of(Shop other, Check check) {
    return new Check(
        other.machines().get(0),
        other.vises().get(0),
        check.handleTo(),
        check.fromLeft(),
        check.fromFront(),
        check.part(),
        other.machines().get(0).guards().stream()
            .filter(guard -> guard.name().equals(check.guard().orElseThrow().name()))
            .findFirst(),
        check.opening(),
        check.whileCutting(),
        check.axis(),
        check.found(),
        check.provenance());
  }

  private Path write(Shop shop, String name) throws IOException {
    Path tables = Files.createDirectory(folder.resolve(name));
    for (Map.Entry<String, String> file : ShopCsv.files(shop).entrySet()) {
      Files.writeString(tables.resolve(file.getKey()), file.getValue());
    }
    return tables;
  }
}
