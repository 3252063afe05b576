package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.WhereWords;
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
    List<String> words = new ArrayList<>();
    closing.stream().map(this::words).distinct().forEach(words::add);
    return words.size() <= MOST ? words : words.subList(0, MOST);
  }

  private static long least(Limit limit) {
    return limit.gap() - limit.tolerance();
  }

  private String words(Limit limit) {
    long least = Math.max(0, least(limit));
    return WhereWords.pair(limit)
        + " closes to "
        + unit.brief(least, Rounding.DOWN)
        + " "
        + (least < MinimumGap.FINGER ? "(less than a finger)" : "(less than a hand)");
  }
}
