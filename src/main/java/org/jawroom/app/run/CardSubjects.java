package org.jawroom.app.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.standing.StandingWords;
import org.jawroom.report.wording.JobWords;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * Solves what setup cards of one machine show.
 *
 * @param refused receives for each card that there is not what it would be of, and why there is
 *     none
 */
public record CardSubjects(
    Settings settings, Machine machine, PeopleUnit unit, BiConsumer<String, String> refused) {

  /** A vise at its recommended place. */
  public Optional<CardSubject> ofPairing(Vise vise) {
    Optional<CardSubject> card = CardSubject.of(settings, machine, vise, warnings(vise));
    if (card.isEmpty()) {
      Verdict verdict = Pairing.solve(settings, machine, vise).verdict();
      refused.accept(pair(vise), reason(verdict) + ": see jawroom explain.");
    }
    return card;
  }

  /** Several vises of a kind side by side. */
  public Optional<CardSubject> ofRow(Vise vise, int count) {
    SolvedPairing solved = Pairing.solved(settings, machine, vise);
    int most = solved.sideBySide().count();
    if (count <= most) {
      return Optional.of(CardSubject.ofRow(settings, solved, count, warnings(vise)));
    }
    refused.accept(
        pair(vise),
        count
            + " do not stand side by side there; at most "
            + most
            + (most == 1 ? " does" : " do")
            + ".");
    return Optional.empty();
  }

  /** A vise at the place at which it holds a job. */
  public Optional<CardSubject> ofJob(Vise vise, Job job) {
    JobExplanation explanation = JobPairing.explain(settings, machine, vise, job);
    if (explanation.outcome().isHeld()) {
      SolvedPairing solved = Pairing.solved(settings, machine, vise);
      return Optional.of(CardSubject.of(solved, explanation, warnings(vise)));
    }
    String why =
        explanation.outcome().shortfalls().isEmpty()
            ? "a dimension that decides it is blank"
            : String.join("; ", new JobWords(unit).failing(explanation.outcome()));
    refused.accept(
        pair(vise), "\"" + job.name() + "\" is not held: " + why + ": see jawroom explain --job.");
    return Optional.empty();
  }

  /** A vise where it stands. */
  public Optional<CardSubject> ofStanding(StandingOutcome there) {
    Vise vise = there.pairing().outcome().vise();
    List<String> warnings = new ArrayList<>(new StandingWords(unit).close(there));
    warnings.addAll(warnings(vise));
    Optional<CardSubject> card = CardSubject.of(there, warnings);
    if (card.isEmpty()) {
      refused.accept(
          pair(vise), "it hits something there or stands off the slots: see jawroom explain --at.");
    }
    return card;
  }

  /** The vises of a set that fits, from left to right. */
  public static List<CardSubject> ofSet(Settings settings, SetOutcome set) {
    return IntStream.range(0, set.stands().size())
        .mapToObj(
            at ->
                CardSubject.ofSet(
                    settings,
                    set,
                    at,
                    Facts.warnings(settings, set.machine(), set.stands().get(at).vise())))
        .toList();
  }

  private List<String> warnings(Vise vise) {
    return Facts.warnings(settings, machine, vise);
  }

  private String pair(Vise vise) {
    return "\"" + vise.name() + "\" on \"" + machine.name() + "\"";
  }

  private static String reason(Verdict verdict) {
    return switch (verdict) {
      case NO_PLACE -> "there is no place for it";
      case NO_MOUNT -> "neither bolts nor clamps hold it in any orientation allowed";
      case UNKNOWN -> "a dimension that decides it is blank";
      case FITS, AWKWARD, LIMITED, MEASURE ->
          throw new IllegalArgumentException(verdict + " has a setup card; no reason to give");
    };
  }
}
