package org.jawroom.report.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.advice.ToTape;
import org.jawroom.advice.ToTape.Decided;
import org.jawroom.advice.tape.Decides;
import org.jawroom.advice.tape.Deciding;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.value.Dimension;

/** What a reading to tape decides, in words; limits are rounded toward less clearance. */
public record ToTapeWords(PeopleUnit unit) {

  private static final int NAMED = 4;

  /** {@code not known}, {@code at most 60 mm}, {@code 50 to 60 mm}; both ends rounded outward. */
  public String bounds(Dimension bounds) {
    boolean low = !bounds.isBlank() && Length.isBounded(bounds.lo()) && bounds.lo() != 0;
    boolean high = !bounds.isBlank() && Length.isBounded(bounds.hi());
    String from = low ? unit.fine(bounds.lo(), Rounding.DOWN) : "0";
    if (high) {
      String to = unit.fine(bounds.hi(), Rounding.UP) + " " + unit.word();
      return low ? from + " to " + to : "at most " + to;
    }
    return low ? "at least " + from + " " + unit.word() : "not known";
  }

  /** {@code fits all 5 if ≥ 41.28; none below 12.5}. */
  public String decides(ToTape one) {
    int all = one.decided().size();
    if (!one.matters()) {
      return "decides" + some(all, all) + " only together with other readings";
    }
    // Only where nothing else is open is a limit more than necessary.
    boolean enough =
        one.decided().stream()
            .map(Decided::deciding)
            .allMatch(is -> is.settles() && (is.limit().isEmpty() || is.sure().equals(is.limit())));
    String fits = enough ? "fits" : "can fit";
    List<String> words = new ArrayList<>();
    addLimits(words, one, Decides.FROM, fits);
    addLimits(words, one, Decides.UP_TO, fits);
    long some = one.decided().stream().filter(is -> is.deciding().how() == Decides.SOME).count();
    if (some > 0) {
      words.add("decides" + some((int) some, all) + ", without a single limit");
    }
    if (!enough) {
      words.add(sure(one, all));
    }
    return String.join("; ", words);
  }

  private String sure(ToTape one, int all) {
    List<Deciding> sure =
        one.decided().stream()
            .map(Decided::deciding)
            .filter(deciding -> deciding.sure().isPresent())
            .toList();
    if (sure.isEmpty()) {
      return "if the other open readings let it";
    }
    boolean least = sure.get(0).how() == Decides.FROM;
    var values = sure.stream().mapToLong(deciding -> deciding.sure().getAsLong());
    return "whatever the others are, fits"
        + some(sure.size(), all)
        + (least
            ? " if ≥ " + unit.fine(values.max().getAsLong(), Rounding.UP)
            : " if ≤ " + unit.fine(values.min().getAsLong(), Rounding.DOWN));
  }

  /** The vises or machines that the pairings are on or with: {@code A, B, C, D and 2 more}. */
  public static String which(ToTape one) {
    return named(partners(one, one.decided()));
  }

  /** Those that it settles by itself. */
  public static String settles(ToTape one) {
    return named(partners(one, one.settled()));
  }

  private static String named(List<String> partners) {
    String named = partners.stream().limit(NAMED).collect(Collectors.joining(", "));
    int more = partners.size() - NAMED;
    return more > 0 ? named + " and " + more + " more" : named;
  }

  /** The names of all partners, in input order. */
  static List<String> partners(ToTape one, List<Decided> decided) {
    return decided.stream().map(Decided::outcome).map(outcome -> partner(one, outcome)).toList();
  }

  private static String partner(ToTape one, Outcome outcome) {
    return one.ofMachine() ? outcome.vise().name() : outcome.machine().name();
  }

  /** {@code within ± 0.5 mm}; empty if nothing asks for it. */
  public String within(ToTape one) {
    return one.within().isPresent()
        ? "within ± " + unit.fine(one.within().getAsLong(), Rounding.DOWN) + " " + unit.word()
        : "";
  }

  private void addLimits(List<String> words, ToTape one, Decides how, String fits) {
    List<Long> limits = limits(one, how);
    if (limits.isEmpty()) {
      return;
    }
    boolean least = how == Decides.FROM;
    long lowest = limits.stream().mapToLong(Long::longValue).min().getAsLong();
    long highest = limits.stream().mapToLong(Long::longValue).max().getAsLong();
    int all = one.decided().size();
    words.add(
        fits
            + some(limits.size(), all)
            + (least
                ? " if ≥ " + unit.fine(highest, Rounding.UP)
                : " if ≤ " + unit.fine(lowest, Rounding.DOWN)));
    if (limits.size() > 1) {
      words.add(
          (limits.size() == all ? "none " : "none of them ")
              + (least
                  ? "below " + unit.fine(lowest, Rounding.DOWN)
                  : "above " + unit.fine(highest, Rounding.UP)));
    }
  }

  private static List<Long> limits(ToTape one, Decides how) {
    return one.decided().stream()
        .map(Decided::deciding)
        .filter(deciding -> deciding.how() == how)
        .map(deciding -> deciding.limit().orElseThrow())
        .toList();
  }

  private static String some(int number, int all) {
    return all == 1 ? "" : number == all ? " all " + all : " " + number;
  }
}
