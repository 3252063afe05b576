package org.jawroom.report.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.geometry.Length;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.Shortfall;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Job;
import org.jawroom.shop.value.Dimension;

/** Jobs in words, lengths in the chosen unit. */
public record JobWords(PeopleUnit unit) {

  /** Nobody weighs a part more finely than to 10 g. */
  private static final int KILOGRAM_DECIMALS = 2;

  /**
   * Returns the outcome, not held, that comes nearest to holding: the one whose failing reason is
   * latest in the order of reasons, then the one with the least shortfall; of equals the first.
   */
  public static Optional<JobOutcome> nearest(List<JobOutcome> outcomes) {
    return outcomes.stream()
        .filter(outcome -> !outcome.shortfalls().isEmpty())
        .max(
            Comparator.comparing((JobOutcome failing) -> first(failing).reason())
                .thenComparing(failing -> first(failing), JobWords::lessMissing)
                .thenComparing(failing -> -outcomes.indexOf(failing)));
  }

  private static Shortfall first(JobOutcome outcome) {
    return outcome.shortfalls().get(0);
  }

  /** Compares two shortfalls of one reason; the one that misses less is the greater. */
  private static int lessMissing(Shortfall one, Shortfall other) {
    int length = Long.compare(other.by().orElse(Long.MAX_VALUE), one.by().orElse(Long.MAX_VALUE));
    BigDecimal none = BigDecimal.ZERO;
    return length != 0
        ? length
        : other.kilograms().orElse(none).compareTo(one.kilograms().orElse(none));
  }

  /** {@code 120 × 60 × 40, tool 150, 2.5 kg}: along the jaws, between them, high. */
  public String size(Job job) {
    List<String> facts = new ArrayList<>();
    facts.add(figure(job.length()) + " × " + figure(job.width()) + " × " + figure(job.height()));
    job.grip().ifPresent(grip -> facts.add("grip " + figure(grip)));
    facts.add(tool(job.toolLength()));
    facts.add(
        job.mass()
            .map(mass -> kilograms(mass, RoundingMode.CEILING) + " kg")
            .orElse("mass not given"));
    job.jawsAlong().ifPresent(axis -> facts.add("jaws along " + axis.letter()));
    return String.join(", ", facts);
  }

  /** Of a range the longest tool that it allows. */
  private String tool(Dimension length) {
    if (length.isBlank()) {
      return "tool length not given";
    }
    return Length.isBounded(length.hi())
        ? "tool " + (length.isKnown() ? "" : "up to ") + figure(length.hi())
        : "tool " + figure(length.lo()) + " or longer";
  }

  /**
   * {@code tool height not checked: nose_max is blank}, one for each requirement left unchecked, in
   * order.
   */
  public static List<String> unchecked(JobOutcome outcome) {
    return outcome.unchecked().stream()
        .map(
            one ->
                switch (one) {
                  case TOOL -> "tool height not checked: " + blank(toolBlanks(outcome));
                  case LOAD -> "weight not checked: " + blank(loadBlanks(outcome));
                })
        .toList();
  }

  /** What stands beside a job: first that it is {@code in doubt}, then what is left unchecked. */
  public static List<String> marks(JobOutcome outcome) {
    List<String> marks = new ArrayList<>();
    inDoubt(outcome).ifPresent(marks::add);
    marks.addAll(unchecked(outcome));
    return marks;
  }

  /**
   * {@code in doubt: checks on the machine say that …}; empty if it is not, whatever the verdict.
   */
  public static Optional<String> inDoubt(JobOutcome outcome) {
    return outcome.inDoubt().isEmpty()
        ? Optional.empty()
        : Optional.of(CaveatWords.inDoubt(outcome.inDoubt()));
  }

  /** A blank nose_min alone keeps only the shortest tool from being checked. */
  private static List<String> toolBlanks(JobOutcome outcome) {
    List<String> blanks = new ArrayList<>();
    if (outcome.job().toolLength().isBlank()) {
      blanks.add("tool_length");
    }
    if (outcome.machine().noseMax().isBlank()) {
      blanks.add("nose_max");
    }
    return blanks.isEmpty() ? List.of("nose_min") : blanks;
  }

  /** A blank mass of the part matters only where a block of steel would be too heavy. */
  private static List<String> loadBlanks(JobOutcome outcome) {
    List<String> blanks = new ArrayList<>();
    if (outcome.vise().mass().isEmpty()) {
      blanks.add("the vise's mass");
    }
    if (outcome.machine().maxLoad().isEmpty()) {
      blanks.add("max_load");
    }
    return blanks.isEmpty() ? List.of("the part's mass") : blanks;
  }

  private static String blank(List<String> columns) {
    return String.join(" and ", columns) + (columns.size() == 1 ? " is blank" : " are blank");
  }

  /** Lists every reason that fails, in order. */
  public List<String> failing(JobOutcome outcome) {
    return outcome.shortfalls().stream().map(shortfall -> why(outcome, shortfall)).toList();
  }

  /** {@code 12.3 too wide for the jaws}. */
  String why(JobOutcome outcome, Shortfall shortfall) {
    OptionalLong by = shortfall.by();
    return switch (shortfall.reason()) {
      case MACHINE -> "not to be run on this machine";
      case TOO_WIDE -> amount(by) + "too wide for the jaws";
      case TOO_NARROW -> amount(by) + "too narrow for the jaws";
      case GRIP -> "grip " + amount(by) + "deeper than the jaws are high";
      case MOUNT -> "neither bolts nor clamps hold the vise";
      case TURN ->
          "neither bolts nor clamps hold the vise with the jaws along "
              + outcome.job().jawsAlong().orElseThrow().letter();
      case HIT -> "hits something or comes too near: " + shortBy(by) + on(outcome);
      case REACH -> "the spindle does not reach the whole part where it is clear: " + shortBy(by);
      case LONG_TOOL -> "no room over the part for the longest tool: " + shortBy(by);
      case SHORT_TOOL -> "the shortest tool does not come down to the part: " + shortBy(by);
      case LOAD ->
          kilograms(shortfall.kilograms().orElseThrow(), RoundingMode.CEILING)
              + " kg too heavy for the table";
    };
  }

  private static String on(JobOutcome outcome) {
    return outcome
        .limit()
        .map(
            limit ->
                // The opening follows from the width of the part that the jaws hold.
                " ("
                    + Words.limit(
                        limit.guard().name(), limit.part().name(), limit.situation(), JawEnd.ANY)
                    + ")")
        .orElse("");
  }

  private String amount(OptionalLong by) {
    return by.isPresent() ? unit.brief(by.getAsLong(), Rounding.UP) + " " : "";
  }

  private String shortBy(OptionalLong by) {
    return by.isPresent() ? "short by " + unit.brief(by.getAsLong(), Rounding.UP) : "at best";
  }

  private String figure(long length) {
    return unit.brief(length, Rounding.UP);
  }

  /** Without trailing zeros. */
  public static String kilograms(BigDecimal mass, RoundingMode rounding) {
    BigDecimal stripped = mass.setScale(KILOGRAM_DECIMALS, rounding).stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }
}
