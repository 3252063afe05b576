package org.jawroom.report.assess;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.advice.Assessed;
import org.jawroom.advice.Assessment;
import org.jawroom.advice.BetterBuy;
import org.jawroom.placement.pairing.Verdict;

/** Which candidate is the better buy, and why, in sentences. */
final class BetterBuyWords {
  private static final String ORDER =
      "Counted in this order: jobs that no owned machine holds, your kinds of vise that fit, what is unknown,"
          + " price. Nothing is weighed; what else a machine is worth is yours to judge.";

  private final Assessment assessment;

  private BetterBuyWords(Assessment assessment) {
    this.assessment = assessment;
  }

  /** One or two sentences a line. */
  static List<String> lines(Assessment assessment) {
    return new BetterBuyWords(assessment).lines();
  }

  private List<String> lines() {
    BetterBuy better = assessment.better();
    List<String> lines = new ArrayList<>();
    if (assessment.candidates().size() == 1) {
      lines.add(counts(assessment.candidates().get(0)));
      return lines;
    }
    if (better.decidedBy().isEmpty()) {
      lines.add(
          "No better buy: "
              + names(better.best())
              + " are equal in all that is counted"
              + (better.best().stream().anyMatch(one -> one.machine().price().isEmpty())
                  ? ", as far as prices are told."
                  : "."));
    } else {
      lines.add("Better buy: " + name(better.best().get(0)) + ". Why: " + why(better));
    }
    assessment.candidates().forEach(one -> lines.add(counts(one)));
    if (!better.rivals().isEmpty()) {
      lines.add(
          "Not settled: with every answer in its favour "
              + names(better.rivals())
              + " may still come out level or better. Ask the seller first.");
    }
    lines.add(ORDER);
    return lines;
  }

  private String why(BetterBuy better) {
    Assessed best = better.best().get(0);
    return switch (better.decidedBy().orElseThrow()) {
      case JOBS ->
          "it holds "
              + jobs(best.onlyHere().size())
              + " that no owned machine holds, "
              + String.join(", ", AssessWords.jobs(best.onlyHere()))
              + against(one -> one.onlyHere().size())
              + ".";
      case VISES ->
          fits(best)
              + " of your "
              + assessment.kinds()
              + " kinds of vise fit on it"
              + against(BetterBuyWords::fits)
              + ". None is ahead of it in jobs that no owned machine holds.";
      case UNKNOWN ->
          best.open()
              + " vises and jobs are unknown on it"
              + against(Assessed::open)
              + ". None is ahead of it in jobs that no owned machine holds, or in vises that fit.";
      case PRICE ->
          "it costs "
              + price(best)
              + against(BetterBuyWords::price)
              + ". None is ahead of it in jobs, in vises that fit, or in how little is unknown.";
    };
  }

  private String against(Function<Assessed, Object> value) {
    return assessment.candidates().stream()
        .filter(one -> !assessment.better().best().contains(one))
        .map(one -> name(one) + ": " + value.apply(one))
        .collect(Collectors.joining(", ", " (", ")"));
  }

  private static String price(Assessed one) {
    return one.machine().price().map(BigDecimal::toPlainString).orElse("not told");
  }

  private String counts(Assessed one) {
    return name(one)
        + ": "
        + jobs(one.onlyHere().size())
        + " held that no owned machine holds"
        + (one.perhapsOnlyHere().isEmpty()
            ? ""
            : ", perhaps " + one.perhapsOnlyHere().size() + " more")
        + "; "
        + fits(one)
        + " of "
        + assessment.kinds()
        + " kinds of vise fit, "
        + one.vises(Verdict.LIMITED).size()
        + " in part, "
        + one.vises(Verdict.UNKNOWN).size()
        + " unknown"
        + (one.mayFit().size() < one.vises(Verdict.UNKNOWN).size()
            ? ", of which " + one.mayFit().size() + " may fit"
            : "")
        + one.machine().price().map(price -> "; price " + price.toPlainString()).orElse("")
        + ".";
  }

  private static int fits(Assessed one) {
    return one.vises(Verdict.FITS).size();
  }

  private static String jobs(int count) {
    return count == 1 ? "1 job" : count + " jobs";
  }

  private static String name(Assessed one) {
    return one.machine().name();
  }

  private static String names(List<Assessed> machines) {
    return machines.stream().map(BetterBuyWords::name).collect(Collectors.joining(" and "));
  }
}
