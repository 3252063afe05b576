package org.jawroom.advice.merit;

import static org.jawroom.fixture.outcome.Invented.CALIPER;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.JobDraft;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.JobVerdict;
import org.jawroom.placement.job.Unchecked;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class JobMeritTest {
  private static final Job JOB = new JobDraft().build();

  private static Made made(String jaw, String margin) {
    Vise vise = vise("v", jaw, "0", "150", Dimension.NONE, CALIPER);
    return new Made(machine("m"), vise, Verdict.FITS)
        .limit(margin, "door", "base", Axis.Y, Situation.CUTTING, JawEnd.ANY);
  }

  private static JobOutcome held(Made made, Unchecked... unchecked) {
    return outcome(made, JobVerdict.HELD, unchecked);
  }

  private static JobOutcome outcome(Made made, JobVerdict verdict, Unchecked... unchecked) {
    var pairing = made.done();
    return new JobOutcome(
        JOB,
        pairing.machine(),
        pairing.vise(),
        verdict,
        pairing.recommended(),
        List.of(),
        Interval.of(0, 1),
        OptionalLong.empty(),
        Optional.empty(),
        OptionalLong.empty(),
        List.of(unchecked),
        List.of(),
        List.of());
  }

  private static void assertBest(JobOutcome best, JobOutcome other) {
    assertEquals(Optional.of(best), JobMerit.best(Settings.DEFAULTS, List.of(best, other)));
    assertEquals(Optional.of(best), JobMerit.best(Settings.DEFAULTS, List.of(other, best)));
  }

  /** Each criterion against everything that comes after it. */
  @Test
  void best_eachCriterion_goesBeforeAllThatFollow() {
    Made free =
        new Made(machine("m"), vise("v", "100", "0", "150", Dimension.NONE, CALIPER), Verdict.FITS)
            .at(Orientation.FRONT, "0", "0");
    assertBest(held(free), held(made("200", "9"), Unchecked.LOAD));
    assertBest(held(made("100", "0").clamped().notSettable()), held(free));
    assertBest(held(made("100", "0").notSettable()), held(made("200", "9").clamped()));
    assertBest(held(made("100", "0")), held(made("200", "9").notSettable()));
    assertBest(held(made("100", "3")), held(made("200", "2.999999")));
    assertBest(held(made("100.000001", "3")), held(made("100", "9")));
    assertBest(held(made("100", "3.000001")), held(made("100", "3")));
  }

  @Test
  void best_ofEqualOnes_isTheFirst() {
    JobOutcome first = held(made("100", "4").nose("100"));
    JobOutcome second = held(made("100", "4").nose("200"));
    assertEquals(Optional.of(first), JobMerit.best(Settings.DEFAULTS, List.of(first, second)));
  }

  @Test
  void best_notHeld_isNone() {
    JobOutcome unheld = outcome(made("100", "4"), JobVerdict.NOT_HELD);
    assertEquals(Optional.empty(), JobMerit.best(Settings.DEFAULTS, List.of(unheld)));
  }
}
