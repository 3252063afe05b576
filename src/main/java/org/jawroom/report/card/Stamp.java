package org.jawroom.report.card;

import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.card.statement.Weight;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.wording.Finding;

/** The verdict at the head of a card, in the one word that every report uses. */
final class Stamp {
  private Stamp() {}

  /**
   * Too heavy takes precedence over every clearance, a doubt over a caveat; another on the table
   * that does not fit where it stands is one.
   */
  static String words(CardSubject subject) {
    Outcome outcome = subject.outcome();
    if (new Weight(PeopleUnit.MM, outcome, subject.others()).tooHeavy().isPresent()) {
      return "too heavy";
    }
    if (!outcome.inDoubt().isEmpty()) {
      return (subject.job().isPresent() ? "held" : Finding.of(subject.placed()).word())
          + ", in doubt";
    }
    if (subject.job().isPresent()) {
      return "held";
    }
    Finding finding = Finding.of(subject.placed());
    boolean areAllSafe =
        subject.standing().stream().allMatch(other -> other.says() == StandingOutcome.Says.FITS);
    return (finding == Finding.FITS && !areAllSafe ? Finding.FITS_BUT : finding).brief();
  }
}
