package org.jawroom.app.choice;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds a contiguous range of named rows.
 *
 * @param all in input order
 * @param find finds one by its name, and prints a line if there is none
 */
record NamedRange<T>(List<T> all, Function<T, String> name, Function<String, Optional<T>> find) {

  /** For lookups that may fail. */
  static final PrintWriter SILENT = new PrintWriter(PrintWriter.nullWriter());

  private static final List<String> BETWEEN = List.of("…", "...", "..");

  /**
   * Those from A to B of {@code A…B} or {@code A..B}, both ends included, or one alone.
   *
   * @param silent finds one by its name without printing
   * @return empty, with one line on {@code err}, if it names none
   */
  Optional<List<T>> of(String range, Function<String, Optional<T>> silent, PrintWriter err) {
    Optional<List<T>> part = found(range, silent);
    if (part.isPresent()) {
      return part;
    }
    for (String between : BETWEEN) {
      int at = range.indexOf(between);
      if (at >= 0) {
        Optional<T> from = find.apply(range.substring(0, at).strip());
        Optional<T> to =
            from.flatMap(there -> find.apply(range.substring(at + between.length()).strip()));
        to.ifPresent(
            last ->
                err.println(
                    "\""
                        + name.apply(last)
                        + "\" stands before \""
                        + name.apply(from.get())
                        + "\" in these tables; name it first."));
        return Optional.empty();
      }
    }
    return find.apply(range.strip()).map(List::of);
  }

  /** Names may contain dots themselves, so every way to split the text is tried. */
  private Optional<List<T>> found(String range, Function<String, Optional<T>> silent) {
    int alone = index(range, silent);
    if (alone >= 0) {
      return Optional.of(all.subList(alone, alone + 1));
    }
    for (String between : BETWEEN) {
      for (int at = range.indexOf(between); at >= 0; at = range.indexOf(between, at + 1)) {
        int from = index(range.substring(0, at), silent);
        int to = index(range.substring(at + between.length()), silent);
        if (from >= 0 && from <= to) {
          return Optional.of(all.subList(from, to + 1));
        }
      }
    }
    return Optional.empty();
  }

  private int index(String named, Function<String, Optional<T>> silent) {
    return silent.apply(named.strip()).map(all::indexOf).orElse(-1);
  }
}
