package org.jawroom.report.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.survey.count.Survey;

/** A survey for a terminal: sentences, then the first entries of each list. */
public final class SurveyText {

  /** More parts would not stand side by side. */
  private static final int PARTS = 6;

  /** The longest text in a column; a longer one is cut. */
  private static final int WIDEST = 44;

  private final PeopleUnit unit;
  private final int top;
  private final Consumer<String> out;

  private SurveyText(PeopleUnit unit, int top, Consumer<String> out) {
    this.unit = unit;
    this.top = top;
    this.out = out;
  }

  /**
   * Prints it line by line.
   *
   * @param top the most entries of each list
   */
  public static void write(Survey survey, PeopleUnit unit, int top, Consumer<String> out) {
    SurveyText text = new SurveyText(unit, top, out);
    for (SurveyWords.Fact fact : new SurveyWords(survey, unit).facts()) {
      out.accept(PlainText.forTerminal(fact.about() + ": " + fact.words()));
    }
    SurveyListings lists = new SurveyListings(survey, unit);
    text.print(lists.groups());
    text.print(lists.limits());
    text.print(lists.guardsByParts(PARTS));
    text.print(lists.vises());
    text.print(lists.unserved());
    survey
        .moved()
        .ifPresent(
            moved -> {
              text.print(lists.turns(moved));
              text.print(lists.shrunk(moved));
              text.print(lists.grown(moved));
            });
  }

  private void print(Listing list) {
    if (list.size() == 0) {
      return;
    }
    List<List<SurveyCell>> entries = new ArrayList<>();
    for (int i = 0; i < Math.min(top, list.size()); i++) {
      entries.add(list.entries().apply(i));
    }
    out.accept("");
    out.accept(list.title());
    List<List<String>> rows = new ArrayList<>();
    rows.add(list.headings().stream().map(heading -> cut(heading.words())).toList());
    entries.forEach(entry -> rows.add(entry.stream().map(this::text).toList()));
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < row.size(); column++) {
        int each = column;
        int width = rows.stream().mapToInt(one -> one.get(each).length()).max().orElseThrow();
        String space = " ".repeat(width - row.get(column).length());
        boolean words = entries.get(0).get(column) instanceof SurveyCell.Text;
        line.append("  ").append(words ? row.get(column) + space : space + row.get(column));
      }
      out.accept(line.toString().stripTrailing());
    }
    if (list.size() > entries.size()) {
      out.accept("  ... and " + (list.size() - entries.size()) + " more");
    }
  }

  private String text(SurveyCell cell) {
    if (cell instanceof SurveyCell.Text text) {
      return cut(text.shown());
    }
    if (cell instanceof SurveyCell.Count count) {
      return String.valueOf(count.number());
    }
    if (cell instanceof SurveyCell.Share share) {
      return String.format(Locale.ROOT, "%.1f", share.percent());
    }
    SurveyCell.Margin margin = (SurveyCell.Margin) cell;
    return margin.length().isPresent()
        ? unit.text(margin.length().getAsLong(), Rounding.DOWN)
        : "-";
  }

  private static String cut(String words) {
    String shown = PlainText.forTerminal(words);
    return shown.length() <= WIDEST ? shown : shown.substring(0, WIDEST - 3) + "...";
  }
}
