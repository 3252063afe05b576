package org.jawroom.report.wording;

import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CaveatWordsTest {

  private static Made made(Verdict verdict) {
    return new Made(machine("mill"), vise("plain"), verdict)
        .best("4")
        .limit("4", "door", "handle", Axis.Y, Situation.LOADING, JawEnd.ANY);
  }

  @ParameterizedTest
  @EnumSource(Caveat.class)
  void fits_withAnyCaveat_isNeverShownAsPlain(Caveat caveat) {
    Outcome outcome = made(Verdict.FITS).overhang("60").but(caveat).done();
    assertEquals(Finding.FITS_BUT, Finding.of(outcome));
    assertEquals(1, new CaveatWords(PeopleUnit.MM).of(outcome).size());
    assertEquals(Finding.FITS, Finding.of(made(Verdict.FITS).done()));
  }

  @Test
  void words_inInches_areRoundedTowardLessClearance() {
    Outcome outcome =
        made(Verdict.FITS)
            .overhang("25.4000005")
            .nose("25.4000005")
            .but(Caveat.HEADS_LEFT_OUT, Caveat.OVERHANG)
            .done();
    assertEquals(
        List.of(
            "heads left out: nose not below 1.01",
            "base overhangs the table by 1.01, more than a quarter of it"),
        new CaveatWords(PeopleUnit.INCH).of(outcome));
  }

  @Test
  void hand_awkwardAndLimited_isRoundedDown() {
    CaveatWords words = new CaveatWords(PeopleUnit.MM);
    assertEquals("handle has 8.9 of room", words.hand(made(Verdict.AWKWARD).hand("8.99").done()));
    assertEquals("handle has 30 of room", words.hand(made(Verdict.LIMITED).hand("30").done()));
    assertEquals("", words.hand(made(Verdict.FITS).hand("30").done()));
    assertEquals("", words.hand(made(Verdict.LIMITED).done()));
  }

  @Test
  void findings_haveTheWordsOfTheVerdictsAndSignsOfTheirOwn() {
    Set<String> signs = new HashSet<>();
    Set<String> words = new HashSet<>();
    for (Finding finding : Finding.values()) {
      signs.add(finding.sign());
      words.add(finding.word());
    }
    assertEquals(Finding.values().length, signs.size());
    assertEquals(
        Set.of("fits", "awkward", "measure", "limited", "no place", "no mount", "unknown"), words);
  }

  @Test
  void sentences_beginWithTheWordOfTheVerdict() {
    Words words = new Words(PeopleUnit.MM);
    assertEquals(
        "Fits, but mind: no room to tap it square.",
        words.sentence(made(Verdict.FITS).but(Caveat.NOT_SETTABLE).done()));
    assertEquals(
        "Awkward: nothing listed is hit, but the handle has 8.9 mm of room, less than a hand wants.",
        words.sentence(made(Verdict.AWKWARD).hand("8.99").done()));
    assertEquals(
        "Measure: it fits only if the readings are better than stated; as they are stated, only with"
            + " the jaws 10 to 50 mm open.",
        words.sentence(made(Verdict.MEASURE).usable("10", "50").done()));
    assertEquals(
        "Limited: it fits only with the jaws 10 to 50 mm open.",
        words.sentence(made(Verdict.LIMITED).usable("10", "50").done()));
  }
}
