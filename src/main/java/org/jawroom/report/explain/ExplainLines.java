package org.jawroom.report.explain;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.WrappedLines;

/** Collects lines for a terminal of 80 columns. */
final class ExplainLines {
  private static final int COLUMNS = 80;

  private final List<String> lines = new ArrayList<>();

  /** Adds a paragraph with a hanging indent. */
  void add(String text) {
    lines.addAll(WrappedLines.wrapped(text, 0, 2, COLUMNS));
  }

  /** Adds an empty line, then a heading. */
  void heading(String text) {
    blank();
    add(text);
  }

  /** Adds a line under a heading. */
  void item(String text) {
    lines.addAll(WrappedLines.wrapped(text, 2, 4, COLUMNS));
  }

  /** Adds text in the column after {@code figures}, which start the first line. */
  void row(String figures, String text) {
    List<String> wrapped = WrappedLines.wrapped(text, figures.length(), figures.length(), COLUMNS);
    lines.add(figures + wrapped.get(0).substring(figures.length()));
    lines.addAll(wrapped.subList(1, wrapped.size()));
  }

  /** Adds text below the text of a {@link #row}. */
  void under(String text) {
    lines.addAll(WrappedLines.wrapped(text, 8, 8, COLUMNS));
  }

  void blank() {
    lines.add("");
  }

  /** Returns all lines, without line ends and harmless to a terminal. */
  List<String> all() {
    return lines.stream().map(PlainText::forTerminal).toList();
  }
}
