package org.jawroom.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.wording.PairingWords;

/** Converts single values to the form that they have in the page's data. */
final class PageValues {
  private PageValues() {}

  /** [lo, hi] in half-nanometres; null stands for an unbounded end. */
  static List<Long> ends(Interval interval) {
    return Arrays.asList(end(interval.lo()), end(interval.hi()));
  }

  private static Long end(long limit) {
    return Length.isBounded(limit) ? limit : null;
  }

  /** One text if both units give the same, else [millimetres, inches]. */
  static Object inBoth(Function<PairingWords, String> words) {
    String metric = words.apply(new PairingWords(PeopleUnit.MM));
    String inches = words.apply(new PairingWords(PeopleUnit.INCH));
    return metric.equals(inches) ? metric : List.of(metric, inches);
  }

  /**
   * As {@link #inBoth}, for several lines. The two lists need not be equally long, since lines that
   * round to the same words are listed once; the shorter one ends in empty lines.
   */
  static List<Object> linesInBoth(Function<PairingWords, List<String>> words) {
    List<String> metric = words.apply(new PairingWords(PeopleUnit.MM));
    List<String> inches = words.apply(new PairingWords(PeopleUnit.INCH));
    List<Object> lines = new ArrayList<>();
    for (int i = 0; i < Math.max(metric.size(), inches.size()); i++) {
      String one = i < metric.size() ? metric.get(i) : "";
      String other = i < inches.size() ? inches.get(i) : "";
      lines.add(one.equals(other) ? one : List.of(one, other));
    }
    return lines;
  }

  /** A map that keeps insertion order and leaves out empty values, {@code false} and null. */
  static final class Facts {
    private final Map<String, Object> map = new LinkedHashMap<>();

    Facts withAll(Map<String, Object> others) {
      map.putAll(others);
      return this;
    }

    Facts with(String key, Object value) {
      boolean idle =
          value == null
              || Boolean.FALSE.equals(value)
              || "".equals(value)
              || value instanceof List<?> list && list.isEmpty();
      if (!idle) {
        map.put(key, value);
      }
      return this;
    }

    /** A name; if a CSV must have it written otherwise, that as well. */
    Facts named(String name) {
      String csv = PlainText.harmless(name);
      return with("name", name).with("csv", csv.equals(name) ? null : csv);
    }

    Map<String, Object> map() {
      return map;
    }
  }
}
