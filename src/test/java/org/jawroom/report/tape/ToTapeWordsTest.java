package org.jawroom.report.tape;

import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.mm;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.advice.ToTape;
import org.jawroom.advice.ToTape.Decided;
import org.jawroom.advice.tape.Decides;
import org.jawroom.advice.tape.Deciding;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.junit.jupiter.api.Test;

class ToTapeWordsTest {
  private static final Measurand REAR = Measurand.of(Column.REAR_GAP, "A");
  private static final ToTapeWords WORDS = new ToTapeWords(PeopleUnit.MM);

  private static OptionalLong length(String text) {
    return text.isEmpty() ? OptionalLong.empty() : OptionalLong.of(mm(text));
  }

  private static Deciding deciding(Decides how, String limit, String sure, boolean settles) {
    return new Deciding(
        REAR,
        Column.REAR_GAP,
        true,
        Dimension.BLANK,
        how,
        length(limit),
        length(sure),
        settles,
        OptionalLong.empty());
  }

  private static ToTape of(Deciding... all) {
    List<Decided> decided = new ArrayList<>();
    for (Deciding one : all) {
      decided.add(
          new Decided(
              new Made(machine("A"), vise("v" + decided.size()), Verdict.UNKNOWN)
                  .missing(Column.REAR_GAP)
                  .done(),
              one));
    }
    return new ToTape(REAR, true, Dimension.BLANK, decided);
  }

  private static String decides(Deciding... all) {
    return WORDS.decides(of(all));
  }

  @Test
  void decides_nothingElseOpen_fits() {
    assertEquals("fits if ≥ 41.28", decides(deciding(Decides.FROM, "41.28", "41.28", true)));
    assertEquals(
        "fits all 2 if ≥ 30; none below 20",
        decides(
            deciding(Decides.FROM, "30", "30", true), deciding(Decides.FROM, "20", "20", true)));
    assertEquals("decides, without a single limit", decides(deciding(Decides.SOME, "", "", true)));
  }

  /** A limit with the others at best is necessary, but does not make it fit. */
  @Test
  void decides_othersOpen_promisesOnlyFromTheSureValue() {
    assertEquals(
        "can fit if ≥ 30; whatever the others are, fits if ≥ 44.5",
        decides(deciding(Decides.FROM, "30", "44.5", true)));
    assertEquals(
        "can fit all 2 if ≤ 30; none above 40; whatever the others are, fits 1 if ≤ 12",
        decides(
            deciding(Decides.UP_TO, "30", "12", true), deciding(Decides.UP_TO, "40", "", false)));
    assertEquals(
        "can fit if ≥ 30; if the other open readings let it",
        decides(deciding(Decides.FROM, "30", "", false)));
    assertEquals(
        "decides all 2 only together with other readings",
        decides(
            deciding(Decides.TOGETHER, "", "", false), deciding(Decides.TOGETHER, "", "", false)));
  }

  @Test
  void bounds_anyEnds_areNamed() {
    assertEquals("not known", WORDS.bounds(Dimension.BLANK));
    assertEquals("50 to 60.5 mm", WORDS.bounds(Dimension.within(mm("50"), mm("60.5"))));
    assertEquals("at most 60 mm", WORDS.bounds(Dimension.within(0, mm("60"))));
    assertEquals("at most 60 mm", WORDS.bounds(Dimension.within(-Length.ENDLESS, mm("60"))));
    assertEquals("at least 5 mm", WORDS.bounds(Dimension.within(mm("5"), Length.ENDLESS)));
  }
}
