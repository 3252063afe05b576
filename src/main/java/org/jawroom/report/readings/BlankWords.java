package org.jawroom.report.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.advice.Advice;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.blank.Relation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;

/** What a blank decides, in words. */
public record BlankWords(PeopleUnit unit) {

  private static final int NAMED = 4;

  /** The machine or vise it belongs to. */
  public static String owner(ToMeasure one) {
    Outcome outcome = one.pairings().get(0).outcome();
    return one.blank().reading().isOfMachine() ? outcome.machine().name() : outcome.vise().name();
  }

  /** {@code fits all 5 if ≥ 41.28; none below 12.5}. */
  public String decides(ToMeasure one) {
    int all = one.pairings().size();
    // If other blanks are open too, a limit is necessary but not sufficient.
    boolean settled = one.alone().size() == all;
    String fits = settled ? "fits" : "can fit";
    List<String> words = new ArrayList<>();
    addLimits(words, one.limits(Relation.AT_LEAST), Relation.AT_LEAST, all, fits);
    addLimits(words, one.limits(Relation.AT_MOST), Relation.AT_MOST, all, fits);
    int always = one.limits(Relation.ALWAYS).size();
    int never = one.limits(Relation.NEVER).size();
    if (always > 0) {
      words.add(fits + some(always, all) + " whatever it is");
    }
    boolean open = !settled && !words.isEmpty();
    if (never > 0) {
      words.add(
          (all == 1 ? "" : never == all ? "all " + all + " " : never + " ")
              + "cannot fit whatever it is");
    }
    long limited =
        one.pairings().stream().filter(pairing -> isLimited(pairing, one.blank())).count();
    if (limited == 0) {
      return "no limit is known";
    }
    if (limited < all) {
      words.add("no limit is known for " + (all - limited));
    }
    return String.join("; ", words) + (open ? "; if the other blanks let it" : "");
  }

  /** The names of the partners for which this blank is the only one. */
  public static String settles(ToMeasure one) {
    Function<Outcome, String> partner =
        one.blank().reading().isOfMachine() ? o -> o.vise().name() : o -> o.machine().name();
    String named =
        one.alone().stream()
            .limit(NAMED)
            .map(Advice::outcome)
            .map(partner)
            .collect(Collectors.joining(", "));
    int more = one.alone().size() - NAMED;
    return more > 0 ? named + " and " + more + " more" : named;
  }

  private void addLimits(
      List<String> words, List<BlankLimit> limits, Relation relation, int all, String fits) {
    if (limits.isEmpty()) {
      return;
    }
    boolean least = relation == Relation.AT_LEAST;
    long lowest = limits.stream().mapToLong(limit -> limit.limit().orElseThrow()).min().getAsLong();
    long highest =
        limits.stream().mapToLong(limit -> limit.limit().orElseThrow()).max().getAsLong();
    String enough =
        least
            ? " if ≥ " + unit.fine(highest, Rounding.UP)
            : " if ≤ " + unit.fine(lowest, Rounding.DOWN);
    words.add(fits + some(limits.size(), all) + enough);
    if (limits.size() > 1) {
      words.add(
          (limits.size() == all ? "none " : "none of them ")
              + (least
                  ? "below " + unit.fine(lowest, Rounding.DOWN)
                  : "above " + unit.fine(highest, Rounding.UP)));
    }
  }

  private static String some(int number, int all) {
    return all == 1 ? "" : number == all ? " all " + all : " " + number;
  }

  private static boolean isLimited(Advice pairing, BlankCell blank) {
    return pairing.limits().stream().anyMatch(limit -> limit.reading().equals(blank.reading()));
  }
}
