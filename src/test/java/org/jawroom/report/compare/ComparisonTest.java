package org.jawroom.report.compare;

import static org.jawroom.report.compare.ComparedRows.limited;
import static org.jawroom.report.compare.ComparedRows.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.rows.PairingRow;
import org.jawroom.report.rows.UnreadablePairings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparisonTest {

  @ParameterizedTest
  @CsvSource({
    "FITS, 5, LIMITED, -1, WORSE",
    "FITS, 5, MEASURE, -1, WORSE",
    "LIMITED, -9, MEASURE, -1, WORSE",
    "FITS, 5, UNKNOWN, '', WORSE",
    "MEASURE, -1, UNKNOWN, '', WORSE",
    "MEASURE, -1, NO_PLACE, -9, WORSE",
    "NO_PLACE, -1, NO_MOUNT, '', WORSE",
    "NO_MOUNT, '', NO_PLACE, -1, BETTER",
    "NO_PLACE, -9, LIMITED, -8, BETTER",
    "NO_PLACE, -9, FITS, '', BETTER",
    "MEASURE, -1, LIMITED, -1, BETTER",
    "LIMITED, -9, FITS, 0, BETTER",
    // More clearance asked for: no place any more over the full opening even with exact readings.
    "MEASURE, -1, LIMITED, -3, OTHERWISE",
    "NO_PLACE, -9, UNKNOWN, '', OTHERWISE",
    "NO_MOUNT, '', UNKNOWN, '', OTHERWISE",
    "UNKNOWN, '', FITS, 5, NOW_KNOWN",
    "UNKNOWN, '', NO_MOUNT, '', NOW_KNOWN",
  })
  void change_ofTheVerdict_followsTheOrder(
      Verdict old, String oldBest, Verdict now, String newBest, Change expected) {
    assertEquals(expected, change(row("M", "v", old, oldBest), row("M", "v", now, newBest)));
  }

  @ParameterizedTest
  @CsvSource({
    "FITS, 5, 5, UNCHANGED",
    "FITS, 5, 4.999, WORSE",
    "FITS, 5, 5.001, BETTER",
    "NO_PLACE, -5, -5.001, WORSE",
    "MEASURE, -0.002, -0.001, BETTER",
    // A fits without a margin was held against nothing, a no place without one is hopeless at best.
    "FITS, 5, '', OTHERWISE",
    "FITS, '', 5, OTHERWISE",
    "FITS, '', '', UNCHANGED",
    "NO_PLACE, '', -5, OTHERWISE",
    "UNKNOWN, '', '', UNCHANGED",
  })
  void change_underTheSameVerdict_followsTheMargin(
      Verdict verdict, String old, String now, Change expected) {
    assertEquals(expected, change(row("M", "v", verdict, old), row("M", "v", verdict, now)));
  }

  @ParameterizedTest
  @CsvSource({
    // best, usable opening and the margin within it, of the old and the new
    "-5, 10-100, 0.001, -5, 10-100, 0.001, UNCHANGED",
    "-5, 10-100, 0.001, -5, 10-100, 0.002, BETTER",
    "-5, 10-100, 0.002, -5, 10-100, 0.001, WORSE",
    "-5, 10-100, 0.001, -5, 9-100, 0, BETTER",
    "-5, 10-100, 0.001, -5, 10-99, 3, WORSE",
    "-5, 10-100, 0.001, -4, 10-100, 0, BETTER",
    "-5, 10-100, 0.001, -4, 9-100, 0, BETTER",
    "-5, 10-100, 0.001, -6, 11-100, 1, WORSE",
    "-5, 10-100, 0.001, -6, 9-100, 0.001, OTHERWISE",
    "-5, 10-100, 0.001, -5, 5-90, 0.001, OTHERWISE",
    "-5, 10-100, 0.001, -6, 5-90, 0.001, OTHERWISE",
  })
  void change_ofTwoLimited_weighsOpeningAndMargin(
      String oldBest,
      String oldUsable,
      String oldMargin,
      String newBest,
      String newUsable,
      String newMargin,
      Change expected) {
    assertEquals(
        expected,
        change(limited(oldBest, oldMargin, oldUsable), limited(newBest, newMargin, newUsable)));
  }

  @Test
  void change_ofTwoFits_comparesTheOpeningThenTheRoomiestPlaceUnderTheSameMargin() {
    PairingRow old = row("M", "v", Verdict.FITS, "5", "3", "0-150");
    assertEquals(Change.WORSE, change(old, row("M", "v", Verdict.FITS, "6", "2", "0-160")));
    assertEquals(Change.BETTER, change(old, row("M", "v", Verdict.FITS, "4", "3", "0-160")));
    assertEquals(Change.WORSE, change(old, row("M", "v", Verdict.FITS, "4", "3", "0-150")));
    assertEquals(Change.UNCHANGED, change(old, row("M", "v", Verdict.FITS, "5", "3", "0-150")));
  }

  @Test
  void change_awkwardToFitsWithLessMargin_isBetter() {
    // The margin of fits alone has the hand room taken off.
    PairingRow awkward = row("M", "v", Verdict.AWKWARD, "18");
    PairingRow fits = row("M", "v", Verdict.FITS, "1");
    assertEquals(Change.BETTER, change(awkward, fits));
    assertEquals(Change.WORSE, change(fits, awkward));
    assertEquals(Change.BETTER, change(row("M", "v", Verdict.LIMITED, "-2"), awkward));
  }

  @Test
  void change_settable_countsUnderTheSameMarginWhereBothReportsHaveIt() {
    PairingRow row = row("M", "v", Verdict.FITS, "5");
    PairingRow yes = ComparedRows.settable(row, Optional.of(true));
    PairingRow no = ComparedRows.settable(row, Optional.of(false));
    assertEquals(Change.BETTER, change(no, yes));
    assertEquals(Change.WORSE, change(yes, no));
    assertEquals(Change.UNCHANGED, change(row, no));
    assertEquals(
        Change.BETTER,
        change(yes, ComparedRows.settable(row("M", "v", Verdict.FITS, "6"), Optional.of(false))));
  }

  @Test
  void pairs_thatGotWorse_startWithTheVerdictThatLostMost() throws IOException {
    List<PairingRow> old = new ArrayList<>();
    List<PairingRow> now = new ArrayList<>();
    add(
        old,
        now,
        row("M", "little less", Verdict.FITS, "5"),
        row("M", "little less", Verdict.FITS, "4.9"));
    add(
        old,
        now,
        row("M", "much less", Verdict.FITS, "50"),
        row("M", "much less", Verdict.FITS, "4"));
    add(
        old,
        now,
        row("M", "to limited", Verdict.FITS, "5"),
        row("M", "to limited", Verdict.LIMITED, "-1"));
    add(
        old,
        now,
        row("M", "no mount", Verdict.FITS, "5"),
        row("M", "no mount", Verdict.NO_MOUNT, ""));
    add(
        old,
        now,
        row("M", "deeper", Verdict.FITS, "5"),
        row("M", "deeper", Verdict.LIMITED, "-30"));
    add(old, now, row("M", "gain", Verdict.FITS, "5"), row("M", "gain", Verdict.FITS, "6"));
    add(
        old,
        now,
        row("M", "great gain", Verdict.FITS, "5"),
        row("M", "great gain", Verdict.FITS, "9"));

    assertEquals(
        List.of("no mount", "deeper", "to limited", "much less", "little less"),
        vises(ComparedRows.Read.of(ComparedRows.comparison(old, now), Change.WORSE).pairs()));
    assertEquals(
        List.of("great gain", "gain"),
        vises(ComparedRows.Read.of(ComparedRows.comparison(old, now), Change.BETTER).pairs()));
  }

  @Test
  void only_namesMachinesAndVisesThatAreNewOrGone() throws IOException {
    PairingRow both = row("A", "v", Verdict.FITS, "5");
    PairingRow gone = row("B", "v", Verdict.FITS, "5");
    PairingRow added = row("A", "w", Verdict.FITS, "5");
    PairingRow alone = row("C", "w", Verdict.FITS, "5");
    List<PairingRow> old = List.of(both, gone);
    List<PairingRow> now = List.of(alone, both, added);
    Comparison comparison = ComparedRows.comparison(old, now);

    assertEquals(1, comparison.count(Change.UNCHANGED));
    assertEquals(List.of(gone), ComparedRows.Read.of(comparison, Change.ONLY_OLD).only());
    assertEquals(List.of("B"), comparison.machinesOnly(Change.ONLY_OLD));
    assertEquals(List.of(), comparison.visesOnly(Change.ONLY_OLD));
    assertEquals(
        List.of(alone, added),
        ComparedRows.Read.of(ComparedRows.comparison(old, now), Change.ONLY_NEW).only());
    assertEquals(List.of("C"), comparison.machinesOnly(Change.ONLY_NEW));
    assertEquals(List.of("w"), comparison.visesOnly(Change.ONLY_NEW));
  }

  /** Against lists held in memory; both sides in any order, some pairings of one side alone. */
  @Test
  void read_ofManyPairings_isInTheOrderInWhichListsWouldBe() throws IOException {
    Random random = new Random(17);
    Map<Change, Integer> met = new EnumMap<>(Change.class);
    for (int world = 0; world < 40; world++) {
      List<PairingRow> old = random(random);
      List<PairingRow> now = random(random);
      Map<List<String>, PairingRow> before = new LinkedHashMap<>();
      old.forEach(row -> before.put(List.of(row.machine(), row.vise()), row));
      List<ComparedPair> both = new ArrayList<>();
      List<PairingRow> onlyNew = new ArrayList<>();
      for (PairingRow row : now) {
        PairingRow was = before.remove(List.of(row.machine(), row.vise()));
        if (was == null) {
          onlyNew.add(row);
        } else {
          both.add(new ComparedPair(was, row));
        }
      }
      for (Change change : Change.values()) {
        List<ComparedPair> expected = new ArrayList<>(both);
        expected.removeIf(pair -> pair.change() != change || change == Change.UNCHANGED);
        Comparator<ComparedPair> worst = (a, b) -> Arrays.compare(a.gains(), b.gains());
        if (change == Change.WORSE || change == Change.BETTER) {
          expected.sort(change == Change.WORSE ? worst : worst.reversed());
        }
        List<PairingRow> only =
            change == Change.ONLY_OLD
                ? List.copyOf(before.values())
                : change == Change.ONLY_NEW ? onlyNew : List.of();
        assertEquals(
            new ComparedRows.Read(expected, only),
            ComparedRows.Read.of(ComparedRows.comparison(old, now), change),
            change + " in world " + world);
        met.merge(change, expected.size() + only.size(), Integer::sum);
      }
    }
    assertTrue(
        met.entrySet().stream()
            .allMatch(one -> one.getKey() == Change.UNCHANGED || one.getValue() > 20),
        met.toString());
  }

  @Test
  void refuseTwins_ofPairingsThereTwice_namesTheFirstOfTheFile() throws IOException {
    PairingRow late = row("A", "v", Verdict.FITS, "5");
    PairingRow early = row("B", "v", Verdict.FITS, "5");
    ComparedSide side = ComparedRows.side(List.of(late, early, early, early, late));
    Comparison.of(side, ComparedRows.side(List.of()));
    assertEquals(
        "row 4 has the same pairing as row 3, B x v",
        assertThrows(UnreadablePairings.class, side::refuseTwins).getMessage());
  }

  private static List<PairingRow> random(Random random) {
    List<PairingRow> rows = new ArrayList<>();
    for (int machine = 0; machine < 6; machine++) {
      for (int vise = 0; vise < 5; vise++) {
        if (random.nextInt(8) > 0) {
          Verdict verdict = Verdict.values()[random.nextInt(Verdict.values().length)];
          String margin = verdict == Verdict.UNKNOWN ? "" : "" + (random.nextInt(5) - 2);
          String usable = verdict == Verdict.LIMITED ? random.nextInt(3) + "-9" : "";
          rows.add(row("m" + machine, "v" + vise, verdict, margin, margin, usable));
        }
      }
    }
    Collections.shuffle(rows, random);
    return rows;
  }

  private static Change change(PairingRow old, PairingRow now) {
    return new ComparedPair(old, now).change();
  }

  private static void add(
      List<PairingRow> olds, List<PairingRow> news, PairingRow old, PairingRow now) {
    olds.add(old);
    news.add(now);
  }

  private static List<String> vises(List<ComparedPair> pairs) {
    return pairs.stream().map(pair -> pair.now().vise()).toList();
  }
}
