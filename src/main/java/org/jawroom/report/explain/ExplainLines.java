package org.jawroom.report.explain;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.WrappedLines;

/** Collects lines for a terminal. */
final class ExplainLines {
  private final int columns;
  private final List<String> lines = new ArrayList<>();

  /** {@code columns}: the most characters in a line. */
  ExplainLines(int columns) {
    this.columns = columns;
  }

  /** Adds a paragraph with a hanging indent. */
  void add(String text) {
    lines.addAll(WrappedLines.wrapped(text, 0, 2, columns));
  }

  /** Adds a paragraph of at most {@code most} lines; what is left over is cut off. */
  void add(String text, int most) {
    lines.addAll(cut(WrappedLines.wrapped(text, 0, 2, columns), most));
  }

  /** Adds an empty line, then a heading. */
  void heading(String text) {
    blank();
    add(text);
  }

  /** Adds an empty line, then a heading of one line. */
  void briefHeading(String text) {
    blank();
    add(text, 1);
  }

  /** Adds a line under a heading. */
  void item(String text) {
    lines.addAll(WrappedLines.wrapped(text, 2, 4, columns));
  }

  /** Adds a line under a heading as at most {@code most} lines; what is left over is cut off. */
  void item(String text, int most) {
    lines.addAll(cut(WrappedLines.wrapped(text, 2, 4, columns), most));
  }

  /** Adds text in the column after {@code figures}, which start the first line. */
  void row(String figures, String text) {
    List<String> wrapped = WrappedLines.wrapped(text, figures.length(), figures.length(), columns);
    lines.add(figures + wrapped.get(0).substring(figures.length()));
    lines.addAll(wrapped.subList(1, wrapped.size()));
  }

  /** The same in one line; what is left over is cut off. */
  void briefRow(String figures, String text) {
    String line =
        cut(WrappedLines.wrapped(text, figures.length(), figures.length(), columns), 1).get(0);
    lines.add(figures + line.substring(figures.length()));
  }

  /** Adds text below the text of a {@link #row}. */
  void under(String text) {
    lines.addAll(WrappedLines.wrapped(text, 8, 8, columns));
  }

  void blank() {
    lines.add("");
  }

  void addAll(ExplainLines others) {
    lines.addAll(others.lines);
  }

  int count() {
    return lines.size();
  }

  /** Returns all lines, without line ends and harmless to a terminal. */
  List<String> all() {
    return lines.stream().map(PlainText::forTerminal).toList();
  }

  private List<String> cut(List<String> wrapped, int most) {
    if (wrapped.size() <= most) {
      return wrapped;
    }
    List<String> kept = new ArrayList<>(wrapped.subList(0, most));
    String last = kept.get(most - 1);
    int room = columns - 2;
    kept.set(
        most - 1,
        (last.codePointCount(0, last.length()) <= room ? last : atAWord(last, room)) + " …");
    return kept;
  }

  /** What of a line has room, up to the last whole word if there is one. */
  private static String atAWord(String line, int room) {
    int end = line.offsetByCodePoints(0, room);
    int space = line.lastIndexOf(' ', end);
    return space < 0 || line.substring(0, space).isBlank()
        ? line.substring(0, end)
        : line.substring(0, space);
  }
}
