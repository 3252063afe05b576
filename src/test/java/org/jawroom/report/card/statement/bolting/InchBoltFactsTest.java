package org.jawroom.report.card.statement.bolting;

import static org.jawroom.geometry.Length.INCH;
import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.report.card.statement.Item;
import org.junit.jupiter.api.Test;

class InchBoltFactsTest {

  /**
   * By hand, for M12 and a flange of 3/4 in: 3/8-16 needs 0.75 + 0.065 + 2 × 0.375 = 1.565 in, and
   * may have 0.75 + 24 / 25.4 + 0.375 = 2.069 in; so 2 in serves t from 0 to 0.435, 2 1/2 in from
   * 0.431 on to the slot's 0.562.
   */
  @Test
  void items_m12InANineSixteenthsSlot_isThreeEighths() {
    List<Item> items =
        new InchBoltFacts(12 * MM, 562 * (INCH / 1000), 2).items(OptionalLong.of(3 * INCH / 4), 0);
    assertEquals(
        List.of(
            new Item(
                "Inch studs:",
                "instead, 2 × 3/8-16 (grade 5) in nuts for slots 0.562 wide: the thickest coarse"
                    + " thread not above M12; 23 lbf ft at most, to start with (SAE J429, else as"
                    + " for the bolts). NOT 1/2-13, which the slot takes: thicker than M12, so"
                    + " neither holes nor clearances are computed for it."),
            new Item(
                "Stud length:",
                "t + 1.57 to t + 2.06 in all, 3/8 or more of it in the T-nut: 2 for t 0 to 0.43,"
                    + " 2 1/2 for t 0.44 to 0.56.")),
        items);
  }

  /** The flange's tolerance is taken off both ends: 1.565 + 0.1 and 2.069 - 0.1. */
  @Test
  void items_flangeWithATolerance_isNarrower() {
    assertEquals(
        "t + 1.67 to t + 1.96 in all, 3/8 or more of it in the T-nut: 2 for t 0.04 to 0.33, 2 1/2"
            + " for t 0.54 to 0.56.",
        length(INCH / 10));
    assertEquals(
        "the flange is known to ± 0.26 only: measure it before you order.",
        length(INCH / 4 + INCH / 100));
  }

  @Test
  void items_noThreadThinEnough_saysSo() {
    List<Item> items = new InchBoltFacts(6 * MM, 15 * MM / 2, 2).items(OptionalLong.of(MM), 0);
    assertEquals(
        List.of(
            new Item(
                "Inch studs:",
                "none stands in for M6: the thinnest is thicker. NOT 1/4-20, which the slot takes:"
                    + " thicker than M6, so neither holes nor clearances are computed for it.")),
        items);
  }

  private static String length(long tolerance) {
    return new InchBoltFacts(12 * MM, 562 * (INCH / 1000), 2)
        .items(OptionalLong.of(3 * INCH / 4), tolerance)
        .get(1)
        .text();
  }
}
