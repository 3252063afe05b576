package org.jawroom.advice.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;

/** The remedies of the shops worked by hand, as its README lists them. */
class ExampleRemediesTest {

  @Test
  void remedies_tighterSixInch_areTravelAndGapsBothWays() throws Exception {
    assertEquals(
        List.of(
            "travel, table front 38.10",
            "travel, table back 38.10",
            "move door 38.10",
            "move rear cover 38.10"),
        remedies("tighter", "six inch"));
  }

  @Test
  void remedies_fullSwingOnRoomy_areUpperSwingTurnOrARiser() throws Exception {
    // The handle, 1 1/4 in = 31.75 deep, hangs between the sill and the table's edge with a quarter
    // inch on either side, 44.45 in all where 40 were taped; half of what is missing is 2.225.
    assertEquals(
        List.of("upper swing", "turn", "raise 51.20", "move sill 4.45", "clearance 2.23"),
        remedies("roomy", "six inch full swing"));
  }

  @Test
  void remedies_deepTable_areThoseWorkedByHand() throws Exception {
    assertEquals(
        List.of("raise 5.00", "move door 24.00"), remedies("example-2", "deep table", "low screw"));
    assertEquals(
        List.of("move door 12.00", "move rear cover 12.00", "clearance 6.00"),
        remedies("example-2", "deep table", "a little long"));
    assertEquals(
        List.of("move door 58.00", "move rear cover 52.00"),
        remedies("example-2", "deep table", "much too long"));
  }

  @Test
  void remedies_wideBoltsOnRoomy_isAnotherTurn() throws Exception {
    assertEquals(List.of("turn"), remedies("roomy", "wide bolts"));
  }

  @Test
  void remedies_tapedByASixteenth_includeThatMuchLessClearanceLast() throws Exception {
    List<String> remedies = remedies("exact-taped", "six inch");
    // 1/16 in = 1.5875 mm is missing, at front and rear alike.
    assertEquals("clearance 1.59", remedies.get(remedies.size() - 1));
  }

  private static List<String> remedies(String machine, String vise) throws Exception {
    return remedies("example", machine, vise);
  }

  private static List<String> remedies(String shop, String machine, String vise) throws Exception {
    return advice(shop(shop), machine, vise).remedies().stream()
        .map(remedy -> remedy.name() + amount(remedy))
        .toList();
  }

  private static String amount(Remedy remedy) {
    return remedy.amount().isEmpty()
        ? ""
        : " "
            + BigDecimal.valueOf(remedy.amount().getAsLong())
                .divide(BigDecimal.valueOf(Length.MM), 2, RoundingMode.UNNECESSARY);
  }

  private static Advice advice(Shop shop, String machineName, String viseName) {
    Machine machine =
        shop.machines().stream()
            .filter(m -> m.name().equals(machineName))
            .findFirst()
            .orElseThrow();
    Vise vise =
        shop.vises().stream().filter(v -> v.name().equals(viseName)).findFirst().orElseThrow();
    return Advisor.advise(shop.settings(), machine, vise);
  }

  private static Shop shop(String name) throws Exception {
    Path folder =
        Path.of(ExampleRemediesTest.class.getResource("/org/jawroom/golden/" + name).toURI());
    return ShopReader.read(folder, Map.of()).shop().orElseThrow();
  }
}
