package org.jawroom.report.assess;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.advice.assess.BetterBuy;
import org.jawroom.placement.pairing.Verdict;

/** Which candidate is the better buy, and why, in sentences. */
final class BetterBuyWords {
  private static final String ORDER =
      "Compared in this order: pieces of jobs that no owned machine holds; your kinds of vise that fit or are"
          + " awkward; the opening, then the jaw of the best vise on it; what is unknown; price. Nothing is"
          + " weighed; what else a machine is worth is yours to judge.";

  private final Assessment assessment;
  private final AssessWords words;

  private BetterBuyWords(AssessWords words) {
    this.assessment = words.assessment();
    this.words = words;
  }

  /** One or two sentences a line. */
  static List<String> lines(AssessWords words) {
    return new BetterBuyWords(words).lines();
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
                  ? ", as far as prices are given."
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
              + against(one -> jobs(one.onlyHere().size()))
              + ".";
      case VISES ->
          best.clear().size()
              + " of your "
              + assessment.kinds()
              + " kinds of vise fit on it or are awkward"
              + against(one -> one.clear().size())
              + ". None is ahead of it in jobs that no owned machine holds.";
      case OPENING ->
          "the best vise on it opens "
              + words.figure(best.opening())
              + against(one -> words.figure(one.opening()))
              + ". None is ahead of it in jobs or in vises.";
      case JAW ->
          "the best vise on it has jaws "
              + words.figure(best.jaw())
              + " wide"
              + against(one -> words.figure(one.jaw()))
              + ". None is ahead of it in jobs, in vises or in opening.";
      case UNKNOWN ->
          best.open()
              + " vises and jobs are unknown on it"
              + against(Assessed::open)
              + ". None is ahead of it in jobs, in vises, in opening or in jaw.";
      case PRICE ->
          "it costs "
              + price(best)
              + against(BetterBuyWords::price)
              + ". None is ahead of it in jobs, in vises, in opening, in jaw or in how little is unknown.";
    };
  }

  private String against(Function<Assessed, Object> value) {
    return assessment.candidates().stream()
        .filter(one -> !assessment.better().best().contains(one))
        .map(one -> name(one) + ": " + value.apply(one))
        .collect(Collectors.joining(", ", " (", ")"));
  }

  private static String price(Assessed one) {
    return one.machine().price().map(BigDecimal::toPlainString).orElse("not given");
  }

  private String counts(Assessed one) {
    return name(one)
        + ": "
        + jobs(one.onlyHere().size())
        + " held that no owned machine holds"
        + inDoubt(one.onlyHere().stream().filter(one.inDoubt()::contains).count())
        + (one.perhapsOnlyHere().isEmpty()
            ? ""
            : ", perhaps " + one.perhapsOnlyHere().size() + " more")
        + "; "
        + one.vises(Verdict.FITS).size()
        + " of "
        + assessment.kinds()
        + " kinds of vise fit"
        + inDoubt(doubts(one, Verdict.FITS))
        + ", "
        + some(one, Verdict.AWKWARD)
        + some(one, Verdict.LIMITED)
        + one.vises(Verdict.UNKNOWN).size()
        + " unknown"
        + (one.mayFit().size() < one.vises(Verdict.UNKNOWN).size()
            ? ", of which " + one.mayFit().size() + " may fit"
            : "")
        + one.machine().price().map(price -> "; price " + price.toPlainString()).orElse("")
        + ".";
  }

  private static String some(Assessed one, Verdict verdict) {
    int count = one.vises(verdict).size();
    return count == 0 ? "" : count + " " + verdict.code() + inDoubt(doubts(one, verdict)) + ", ";
  }

  private static long doubts(Assessed one, Verdict verdict) {
    return one.outcomes(verdict).stream().filter(outcome -> !outcome.inDoubt().isEmpty()).count();
  }

  private static String inDoubt(long count) {
    return count == 0 ? "" : " (" + count + " " + AssessWords.IN_DOUBT + ")";
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
