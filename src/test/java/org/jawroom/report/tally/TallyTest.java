package org.jawroom.report.tally;

import static org.jawroom.fixture.outcome.Invented.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jawroom.advice.Advice;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.SampleShop;
import org.jawroom.report.wording.Finding;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;

class TallyTest {
  private final Shop shop = new SampleShop().shop;

  /** 16.777217 mm are 33 554 434 half-nanometres, which no float of 24 bits can hold. */
  @Test
  void margins_ofManyDigits_areExact() {
    Tally tally = new Tally(PairingMerit.OF_VISES);
    Stream.of("16.777217", "99999.999999")
        .map(this::fits)
        .forEach(one -> tally.add(0, one, Finding.of(one.outcome()), Optional.empty()));
    assertEquals(OptionalLong.of(mm("16.777217")), tally.leastMargin());
    assertEquals(OptionalLong.of(mm("99999.999999")), tally.greatestMargin());
  }

  private Advice fits(String margin) {
    return new Advice(
        new Made(shop.machines().get(0), shop.vises().get(0), Verdict.FITS)
            .best(margin)
            .limit(margin, "door", "handle", Axis.Y, Situation.LOADING, JawEnd.ANY)
            .done(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }
}
