package org.jawroom.report;

import static org.jawroom.report.Invented.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Verdict;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;

class TallyTest {
  private final Shop shop = new SampleShop().shop;

  /** 16.777217 mm are 33 554 434 half-nanometres, which no float of 24 bits can hold. */
  @Test
  void margins_ofManyDigits_areExact() {
    List<Outcome> outcomes = List.of(fits("16.777217"), fits("99999.999999"));
    Tally tally = Tally.of(outcomes, List.of(0, 0)).get(0);
    assertEquals(OptionalLong.of(mm("16.777217")), tally.leastMargin());
    assertEquals(OptionalLong.of(mm("99999.999999")), tally.greatestMargin());
  }

  private Outcome fits(String margin) {
    return new Made(shop.machines().get(0), shop.vises().get(0), Verdict.FITS).best(margin).done();
  }
}
