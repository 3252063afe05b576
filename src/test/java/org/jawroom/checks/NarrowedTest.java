package org.jawroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Shop;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What checks that agree leave of open readings; the shop worked by hand with readings opened. */
class NarrowedTest {
  @TempDir Path folder;

  private Reconciliation of(Map<String, String> changes, String... checks) throws Exception {
    for (String table : List.of("machines", "vises")) {
      String text =
          Files.readString(
              Path.of(NarrowedTest.class.getResource("hand/" + table + ".csv").toURI()));
      for (Map.Entry<String, String> change : changes.entrySet()) {
        text = text.replace(change.getKey(), change.getValue());
      }
      Files.writeString(folder.resolve(table + ".csv"), text);
    }
    Files.writeString(
        folder.resolve("checks.csv"),
        "machine,vise,handle_to,from_left,from_front,part,guard,axis,found\n"
            + String.join("\n", checks));
    Shop shop = ShopReader.read(folder, Map.of()).shop().orElseThrow();
    return Reconciliation.of(shop);
  }

  private static ValueRange mm(double lo, double hi) {
    return new ValueRange(Optional.of(length(lo)), Optional.of(length(hi)));
  }

  private static Rational length(double mm) {
    return Rational.of(Math.round(mm * Length.MM));
  }

  /**
   * The gap is 20 + rear_gap − the screw's 0, off by 1 mm: 60 found leaves 39 to 41 of 10 to 90.
   */
  @Test
  void left_ofOneRange_isWhatTheGapSays() throws Exception {
    Reconciliation said =
        of(
            Map.of(",100,60,none", ",100,10..90,none"),
            "hand mill,hand vise,front,200,200,screw rear,rear cover,y,60");
    assertEquals("rear_gap", said.narrowed().get(0).reading().reading());
    assertEquals(mm(10, 90), said.narrowed().get(0).was());
    assertEquals(mm(39, 41), said.narrowed().get(0).now());
    assertEquals(List.of(), said.suspicions());
  }

  /** A blank gap has no ends; the check gives it both. */
  @Test
  void left_ofABlank_hasEnds() throws Exception {
    Reconciliation said =
        of(
            Map.of(",100,60,none", ",100,,none"),
            "hand mill,hand vise,front,200,200,screw rear,rear cover,y,60");
    assertEquals(ValueRange.ALL, said.narrowed().get(0).was());
    assertEquals(mm(39, 41), said.narrowed().get(0).now());
  }

  /** The gap is rear_gap − rear_reach + 70: each leaves what the other's range allows. */
  @Test
  void left_ofTwoRanges_isWhatTheOtherAllows() throws Exception {
    Reconciliation said =
        of(
            Map.of(",100,60,none", ",100,50..90,none", ",200,50,150,", ",200,40..60,150,"),
            "hand mill,hand vise,front,200,200,screw rear,rear cover,y,60");
    assertEquals(
        List.of(
            new Narrowed(said.narrowed().get(0).reading(), mm(50, 90), mm(50, 51)),
            new Narrowed(said.narrowed().get(1).reading(), mm(40, 60), mm(59, 60))),
        said.narrowed());
  }

  /** Only what agrees narrows; touching the end of a range agrees. */
  @Test
  void left_atTheEndOfARange_isASinglePoint() throws Exception {
    String check = "hand mill,hand vise,front,200,200,screw rear,rear cover,y,";
    Map<String, String> range = Map.of(",100,60,none", ",100,10..90,none");
    assertEquals(mm(90, 90), of(range, check + "111").narrowed().get(0).now());
    assertEquals(List.of(), of(range, check + "111.000001").narrowed());
    assertEquals(1, of(range, check + "111.000001").suspicions().size());
    assertEquals(List.of(), of(range, check + "111.000001").narrowed());
  }
}
