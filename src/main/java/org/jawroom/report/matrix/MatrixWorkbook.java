package org.jawroom.report.matrix;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.IntFunction;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.advice.Advice;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.limits.LimitTally;
import org.jawroom.report.limits.WhatLimitsSheet;
import org.jawroom.report.set.SetsSheet;
import org.jawroom.report.standing.StandingSheet;
import org.jawroom.report.tally.ShopOutcomes;
import org.jawroom.report.tally.Totals;
import org.jawroom.report.xlsx.CautionsSheet;
import org.jawroom.report.xlsx.InputsSheet;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.report.xlsx.book.StableWorkbook;
import org.jawroom.shop.Shop;

/** {@code matrix.xlsx}: the workbook for people. */
public final class MatrixWorkbook {

  /** The name of the file. */
  public static final String FILE = "matrix.xlsx";

  /** The title in the file's properties. */
  public static final String TITLE = "Which vise goes on which machine";

  private MatrixWorkbook() {}

  /**
   * Writes the workbook; does not close {@code out}.
   *
   * @param advice one for each pairing, machines then vises in the order of {@code shop}
   * @param totals over all of them, those of jobs detailed
   * @param beside what was worked out beside the pairings
   * @throws IllegalArgumentException if there are more or fewer
   */
  public static void write(
      Shop shop,
      List<Advice> advice,
      Totals totals,
      ShopOutcomes beside,
      RunFacts facts,
      ReportOptions wanted,
      SheetLimits limits,
      IntFunction<Layout> layouts,
      OutputStream out)
      throws IOException {
    if (advice.size() != shop.machines().size() * shop.vises().size()) {
      throw new IllegalArgumentException(
          advice.size()
              + " pairings for "
              + shop.machines().size()
              + " machines and "
              + shop.vises().size()
              + " vises");
    }
    StableWorkbook.write(
        TITLE,
        book -> fill(book, shop, advice, totals, beside, facts, wanted, limits, layouts),
        out);
  }

  private static void fill(
      SXSSFWorkbook book,
      Shop shop,
      List<Advice> advice,
      Totals totals,
      ShopOutcomes beside,
      RunFacts facts,
      ReportOptions wanted,
      SheetLimits limits,
      IntFunction<Layout> layouts)
      throws IOException {
    Styles styles = new Styles(book.getXSSFWorkbook(), facts.unit());
    List<Outcome> outcomes = advice.stream().map(Advice::outcome).toList();
    DrawnPairings drawn = new DrawnPairings(outcomes, wanted.drawings());
    String remark = wanted.remedies() ? "" : "; REMEDIES WERE NOT WORKED OUT";
    MatrixSheet.add(book, styles, shop, outcomes, totals, drawn, remark, limits);
    if (!shop.jobs().isEmpty()) {
      JobsSheet.add(book, styles, shop, totals.jobs(), limits);
    }
    if (!shop.standing().isEmpty()) {
      StandingSheet.add(book, styles, beside.standing(), limits);
    }
    if (!shop.sets().isEmpty()) {
      SetsSheet.add(book, styles, shop.settings(), beside.sets(), limits);
    }
    PairingsSheet.add(book, styles, advice, limits);
    NoPlaceSheet.add(book, styles, outcomes, limits);
    if (wanted.remedies()) {
      RemediesSheet.add(book, styles, shop, advice, limits);
      ToMeasureSheet.add(book, styles, shop, advice, limits);
    }
    TallySheet.addByMachine(book, styles, totals, wanted.remedies());
    TallySheet.addByVise(book, styles, totals);
    WhatLimitsSheet.add(book, styles, limiting(outcomes), limits);
    if (wanted.drawings() > 0) {
      DrawingsSheet.add(
          book, styles, shop.settings(), outcomes, shop.vises().size(), drawn, layouts);
    }
    CautionsSheet.add(book, styles);
    InputsSheet.add(book, styles, facts, limits);
  }

  private static LimitTally limiting(List<Outcome> outcomes) {
    LimitTally tally = new LimitTally();
    for (Outcome outcome : outcomes) {
      outcome
          .recommended()
          .flatMap(Recommendation::limit)
          .ifPresent(limit -> tally.add(limit.guard().name(), limit.part().name(), limit.margin()));
    }
    return tally;
  }
}
