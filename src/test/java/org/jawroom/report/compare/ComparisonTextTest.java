package org.jawroom.report.compare;

import static org.jawroom.report.compare.ComparedRows.limited;
import static org.jawroom.report.compare.ComparedRows.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.WrappedLines;
import org.jawroom.report.rows.PairingRow;
import org.junit.jupiter.api.Test;

class ComparisonTextTest {
  private static Comparison everyKind() throws IOException {
    return ComparedRows.comparison(
        List.of(
            row("A", "v", Verdict.FITS, "12.049", "12.049", "0-152.4"),
            row("A", "w", Verdict.FITS, "5.049"),
            row("B", "v", Verdict.MEASURE, "-0.5"),
            row("B", "w", Verdict.UNKNOWN, ""),
            row("C", "v", Verdict.NO_PLACE, "-7"),
            row("C", "w", Verdict.FITS, "3"),
            row("gone", "v", Verdict.FITS, "1")),
        List.of(
            row("A", "v", Verdict.LIMITED, "-0.051", "0.001", "76.21-152.4"),
            row("A", "w", Verdict.FITS, "5.001"),
            row("B", "v", Verdict.FITS, "0.5"),
            row("B", "w", Verdict.NO_MOUNT, ""),
            row("C", "v", Verdict.UNKNOWN, ""),
            row("C", "w", Verdict.FITS, "3"),
            row("A", "=x", Verdict.FITS, "1.2")));
  }

  @Test
  void lines_ofEveryKindOfChange_areGroupedWithTheWorstFirst() throws IOException {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(
          List.of(
              "Old: reports",
              "New: shop.xlsx",
              "      2  got worse",
              "      1  got better",
              "      1  now known",
              "      1  changed otherwise",
              "      1  unchanged",
              "      1  only in the old",
              "      1  only in the new",
              "Got worse:",
              "  A x v: fits → limited",
              "      margin 12.0 → 0.0 mm; usable 0 to 152.4 → 76.3 to 152.4; still limited by",
              "      door - screw front, open",
              "  A x w: still fits",
              "      margin 5.049 → 5.001 mm; still limited by door - screw front, open",
              "Got better:",
              "  B x v: measure → fits",
              "      margin -0.5 → 0.5 mm; still limited by door - screw front, open",
              "Now known:",
              "  B x w: unknown → no mount",
              "Changed otherwise:",
              "  C x v: no place → unknown",
              "      margin was -7.0 mm; left open by machines.rear_gap, vises.base_width",
              "Only in the old:",
              "  machine gone",
              "Only in the new:",
              "  vise =x"),
          written("reports", "shop.xlsx", everyKind(), PeopleUnit.MM));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void csv_ofEveryKindOfChange_hasARowForEach() throws IOException {
    StringBuilder out = new StringBuilder();
    ComparisonCsv.write(everyKind(), out);
    assertEquals(
        List.of(
            "machine,vise,change,old_verdict,new_verdict,old_margin_mm,new_margin_mm,limited_by",
            "A,v,worse,fits,limited,12.049,0.001,door",
            "A,w,worse,fits,fits,5.049,5.001,door",
            "B,v,better,measure,fits,-0.500,0.500,door",
            "B,w,now known,unknown,no mount,,,",
            "C,v,otherwise,no place,unknown,-7.000,,",
            "gone,v,only old,fits,,1.000,,",
            "A,'=x,only new,,fits,,1.200,door",
            ""),
        List.of(out.toString().split("\r\n", -1)));
  }

  @Test
  void lines_inInches_areRoundedTowardLess() throws IOException {
    // 0.999 in and 1.009 in; 2.999 in drawn in to 3.00, 5.999 in to 5.99.
    List<String> lines =
        lines(
            limited("-25.3746", "0.0254", "76.1746-152.3746"),
            limited("-25.6286", "0.2794", "76.4286-152.3746"),
            PeopleUnit.INCH);
    assertEquals(
        List.of(
            "      margin over the full opening -1.00 → -1.01 in; within the usable opening",
            "      0.00 → 0.01 in; usable 3 to 5.99 → 3.01 to 5.99; still limited by door -",
            "      screw front, open"),
        lines.subList(lines.size() - 3, lines.size()));
  }

  @Test
  void lines_ofTheSameMargin_sayWhatElseChanged() throws IOException {
    PairingRow old = row("M", "v", Verdict.FITS, "9", "5", "");
    PairingRow roomier = row("M", "v", Verdict.FITS, "9.5", "5", "");
    List<String> lines =
        lines(
            ComparedRows.settable(old, Optional.of(true)),
            ComparedRows.settable(roomier, Optional.of(false)),
            PeopleUnit.MM);
    assertEquals(
        List.of(
            "Got worse:",
            "  M x v: still fits",
            "      margin 5.0 mm as before; roomiest 9.0 → 9.5 mm; can no longer be tapped",
            "      square; still limited by door - screw front, open"),
        lines.subList(lines.size() - 4, lines.size()));
  }

  @Test
  void lines_ofNothingListed_neverShowAPlainFits() throws IOException {
    PairingRow nothing = row("M", "v", Verdict.FITS, "");
    List<String> lines = lines(nothing, row("M", "v", Verdict.NO_PLACE, "-1"), PeopleUnit.MM);
    assertTrue(lines.contains("  M x v: fits (nothing listed to hit) → no place"), lines::toString);
  }

  @Test
  void lines_ofAnOpeningChangedByLessThanIsShown_giveItExactly() throws IOException {
    List<String> lines =
        lines(
            limited("-5", "0.001", "76.21-152.4"),
            limited("-5", "0.002", "76.22-152.4"),
            PeopleUnit.MM);
    assertEquals(
        List.of(
            "      margin over the full opening -5.0 mm as before; usable 76.210 to 152.400 →",
            "      76.220 to 152.400 mm; still limited by door - screw front, open"),
        lines.subList(lines.size() - 2, lines.size()));
  }

  @Test
  void lines_ofLongAndHostileNames_stayWithin80ColumnsAndSteerNothing() throws IOException {
    String name = "vertical centre, hall 2, bay 11\u001b[2J " + "x".repeat(100);
    PairingRow old = row(name, name, Verdict.FITS, "5");
    List<String> lines = lines(old, row(name, name, Verdict.FITS, "4"), PeopleUnit.MM);
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80), lines::toString);
    assertTrue(lines.stream().noneMatch(line -> line.contains("\u001b")), lines::toString);
  }

  @Test
  void wrapped_breaksBetweenWordsAndWithinOnlyWhereItMust() {
    assertEquals(List.of("  ab", "   cd", "   ef"), WrappedLines.wrapped("ab cd ef", 2, 3, 6));
    assertEquals(List.of("abc def"), WrappedLines.wrapped("abc def", 0, 2, 7));
    assertEquals(List.of("abcd", " efg", " h"), WrappedLines.wrapped("abcdefgh", 0, 1, 4));
  }

  private static List<String> lines(PairingRow old, PairingRow now, PeopleUnit unit)
      throws IOException {
    return written("a", "b", ComparedRows.comparison(List.of(old), List.of(now)), unit);
  }

  private static List<String> written(
      String old, String now, Comparison comparison, PeopleUnit unit) throws IOException {
    List<String> lines = new ArrayList<>();
    ComparisonText.write(old, now, comparison, unit, lines::add);
    return lines;
  }
}
