package org.jawroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.checks.expected.ExpectedGap;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Check;
import org.jawroom.shop.Shop;
import org.jawroom.shop.value.Provenance;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shop worked by hand in {@code checks/hand/README.md}. */
class HandWorkedChecksTest {

  private static Shop shop() throws Exception {
    Path folder = Path.of(HandWorkedChecksTest.class.getResource("hand/machines.csv").toURI());
    return ShopReader.read(folder.getParent(), Map.of()).shop().orElseThrow();
  }

  private static ValueRange mm(long lo, long hi) {
    return new ValueRange(
        Optional.of(Rational.of(lo * Length.MM)), Optional.of(Rational.of(hi * Length.MM)));
  }

  @Test
  void checks_haveTheExpectationsOfThePage() throws Exception {
    List<ExpectedGap> gaps =
        Reconciliation.of(shop()).checks().stream()
            .map(result -> result.expected().orElseThrow())
            .toList();
    assertEquals(
        List.of(mm(79, 81), mm(109, 111), mm(249, 251)),
        gaps.stream().map(ExpectedGap::range).toList());
    assertEquals(
        List.of("closer", "closer", "agrees"),
        gaps.stream().map(gap -> gap.says().code()).toList());
    assertEquals(Optional.of(Rational.of(9 * Length.MM)), gaps.get(0).outside());
    assertEquals(Optional.empty(), gaps.get(2).outside());
  }

  @Test
  void suspects_areTheTwoThatExplainAll() throws Exception {
    Reconciliation said = Reconciliation.of(shop());
    assertEquals(1, said.suspicions().size());
    Suspicion suspicion = said.suspicions().get(0);
    assertEquals(
        Map.of("table_width", mm(289, 291), "rear_gap", mm(49, 51)),
        suspicion.choices().stream()
            .map(choice -> choice.get(0))
            .collect(
                java.util.stream.Collectors.toMap(
                    suspect -> suspect.reading().reading(), Suspect::mustBe)));
    assertEquals(
        List.of(2, 2),
        suspicion.choices().stream().map(choice -> choice.get(0).explains()).toList());
    assertEquals(Optional.of(suspicion.choices().get(0).get(0).reading()), suspicion.tellsApart());
    assertEquals(List.of(), said.narrowed());
  }

  /** Both tolerances are 0.5 mm, and both measures of the check may be off by 0.25 mm. */
  @ParameterizedTest
  @CsvSource({
    "78.5, agrees",
    "78.499999, closer",
    "78.500001, agrees",
    "81.5, agrees",
    "81.500001, farther",
    "81.499999, agrees"
  })
  void says_atTheLimitOfTheTolerances_agrees(java.math.BigDecimal found, String says)
      throws Exception {
    Shop shop = shop();
    Check first = shop.checks().get(0);
    Check changed =
        new Check(
            first.machine(),
            first.vise(),
            first.handleTo(),
            first.fromLeft(),
            first.fromFront(),
            first.part(),
            first.guard(),
            first.opening(),
            first.whileCutting(),
            first.axis(),
            found.multiply(java.math.BigDecimal.valueOf(Length.MM)).longValueExact(),
            new Provenance(Length.MM / 4, false, "", ""));
    Shop one = shop.withChecks(List.of(changed));
    Reconciliation said = Reconciliation.of(one);
    assertEquals(says, said.checks().get(0).expected().orElseThrow().says().code());
    assertEquals(says.equals("agrees"), said.suspicions().isEmpty());
  }
}
