package org.jawroom.report.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.checks.Reconciliation;
import org.jawroom.fixture.TestShop;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A gap found below the clearance asked for comes first, even where a tolerance lets it agree. */
class ReconcileTextTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"6, false", "5.999999, true", "6.000001, false"})
  void lines_ofAGapBelowTheClearance_sayStopFirst(String found, boolean stop) throws Exception {
    Shop shop =
        TestShop.sound(folder)
            .check("found", found, "part", "fixed jaw", "tolerance", "10")
            .read()
            .shop()
            .orElseThrow();
    List<String> lines =
        ReconcileText.lines(
            PeopleUnit.MM, shop.settings().clearance(), Reconciliation.of(shop), Map.of(), 100);
    assertEquals(
        stop,
        lines
            .get(1)
            .equals(
                "STOP: less than the clearance asked for was found there, whatever the tables"
                    + " say:"));
  }
}
