package org.jawroom.report.survey;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.limits.SheetChart;
import org.jawroom.report.limits.WhatLimitsSheet;
import org.jawroom.report.survey.count.Moved;
import org.jawroom.report.survey.count.Survey;
import org.jawroom.report.xlsx.CautionsSheet;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.report.xlsx.book.StableWorkbook;

/** A survey as a workbook: a sheet for each list, charts of the margins and of what limits. */
final class SurveyWorkbook {
  static final String TITLE = "Survey of pairings";

  /** More parts than a vise has without parts of its own. */
  private static final int PARTS = 24;

  /** The cells that the chart of the margins covers, beside its list. */
  private static final int CHART_FROM = 4;

  private static final int CHART_TO = CHART_FROM + 14;
  private static final int CHART_ROWS = 26;

  private final SXSSFWorkbook book;
  private final Styles styles;

  private SurveyWorkbook(SXSSFWorkbook book, PeopleUnit unit) {
    this.book = book;
    styles = new Styles(book.getXSSFWorkbook(), unit);
  }

  /** Writes the workbook; does not close {@code out}. */
  static void write(Survey survey, PeopleUnit unit, OutputStream out) throws IOException {
    StableWorkbook.write(TITLE, book -> new SurveyWorkbook(book, unit).add(survey), out);
  }

  private void add(Survey survey) {
    SurveyListings lists = new SurveyListings(survey, styles.unit());
    facts(survey);
    sheet("Counts", lists.groups());
    margins(lists.margins());
    WhatLimitsSheet.add(book, styles, survey.limits(), SheetLimits.XLSX);
    sheet("Guard by part", lists.guardsByParts(PARTS));
    sheet("Fewest vises", lists.vises(), lists.unserved());
    Optional<Moved> moved = survey.moved();
    if (moved.isPresent()) {
      sheet("Verdicts changed", lists.turns(moved.get()));
      sheet("Margins shrunk", lists.shrunk(moved.get()));
      sheet("Margins grown", lists.grown(moved.get()));
    }
    CautionsSheet.add(book, styles);
  }

  private void facts(Survey survey) {
    ListSheet list =
        new ListSheet(
            book,
            styles,
            "Survey",
            List.of(new Heading("About", 16), new Heading("What is counted", 110)),
            0);
    list.head(TITLE, "");
    for (SurveyWords.Fact fact : new SurveyWords(survey, styles.unit()).facts()) {
      list.entry();
      list.text(fact.about());
      list.text(fact.words());
    }
    list.finish();
  }

  private void margins(Listing bars) {
    String name = "Margins";
    List<List<SurveyCell>> shown = sheet(name, bars);
    if (shown.isEmpty()) {
      return;
    }
    int top = ListSheet.FIRST_ENTRY - 1;
    List<String> words = new ArrayList<>();
    List<Long> counts = new ArrayList<>();
    for (List<SurveyCell> bar : shown) {
      words.add(((SurveyCell.Text) bar.get(0)).words());
      counts.add(((SurveyCell.Count) bar.get(1)).number());
    }
    new SheetChart("Margins, " + styles.unit().word(), ListSheet.FIRST_ENTRY, 0, words, 1, counts)
        .standing(
            book,
            name,
            new XSSFClientAnchor(0, 0, 0, 0, CHART_FROM, top, CHART_TO, top + CHART_ROWS));
  }

  /** Writes the entries that fit, and returns the first of them. */
  private List<List<SurveyCell>> sheet(String name, Listing listing) {
    ListSheet list = new ListSheet(book, styles, name, listing.headings(), 1);
    int shown = Math.min(listing.size(), room(listing));
    list.head(listing.title(), ListSheet.cut(shown, listing.size(), "") + listing.remark());
    List<List<SurveyCell>> first = entries(list, listing, shown);
    list.finish();
    return first;
  }

  /** A short list with another one below it. */
  private void sheet(String name, Listing listing, Listing below) {
    ListSheet list = new ListSheet(book, styles, name, listing.headings(), 0, false);
    list.head(listing.title(), listing.remark());
    entries(list, listing, listing.size());
    list.below(
        below.title(), below.remark(), below.headings().stream().map(Heading::words).toList());
    entries(list, below, Math.min(below.size(), room(below) - listing.size()));
    list.finish();
  }

  private static int room(Listing listing) {
    return Math.min(
        ListSheet.room(SheetLimits.XLSX), SheetLimits.XLSX.cells() / listing.headings().size());
  }

  private static List<List<SurveyCell>> entries(ListSheet list, Listing listing, int shown) {
    List<List<SurveyCell>> first = new ArrayList<>();
    for (int i = 0; i < shown; i++) {
      List<SurveyCell> cells = listing.entries().apply(i);
      list.entry();
      cells.forEach(cell -> put(list, cell));
      if (first.size() < CHART_ROWS) {
        first.add(cells);
      }
    }
    return first;
  }

  private static void put(ListSheet list, SurveyCell cell) {
    if (cell instanceof SurveyCell.Text text) {
      list.text(text.shown());
    } else if (cell instanceof SurveyCell.Count count) {
      list.number((double) count.number(), "0");
    } else if (cell instanceof SurveyCell.Share share) {
      list.number(share.percent(), "0.0");
    } else if (cell instanceof SurveyCell.Margin margin) {
      list.length(margin.length(), Rounding.DOWN);
    }
  }
}
