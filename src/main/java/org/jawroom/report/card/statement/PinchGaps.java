package org.jawroom.report.card.statement;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.standards.MinimumGap;

/** Gaps that close to less than a hand's width while the table moves. */
record PinchGaps(PeopleUnit unit, List<Limit> pairs) {
  private static final int MOST = 3;

  /** The gaps in words; empty if none closes that far. */
  List<String> words() {
    List<Limit> closing =
        pairs.stream()
            .filter(limit -> limit.situation() == Situation.CUTTING)
            .filter(limit -> limit.guard().moves().has(limit.axis()))
            .filter(limit -> least(limit) < MinimumGap.HAND)
            .sorted((one, other) -> Long.compare(least(one), least(other)))
            .toList();
    // Of the strips of a turned part the nearest.
    Map<String, Limit> least = new LinkedHashMap<>();
    closing.forEach(limit -> least.putIfAbsent(WhereWords.pair(limit), limit));
    return least.values().stream().limit(MOST).map(this::words).toList();
  }

  private static long least(Limit limit) {
    return limit.gap() - limit.tolerance();
  }

  private String words(Limit limit) {
    long least = Math.max(0, least(limit));
    return WhereWords.pair(limit)
        + (limit.part().outline().isPresent() ? " may close to " : " closes to ")
        + unit.brief(least, Rounding.DOWN)
        + " "
        + (least < MinimumGap.FINGER ? "(less than a finger)" : "(less than a hand)");
  }
}
