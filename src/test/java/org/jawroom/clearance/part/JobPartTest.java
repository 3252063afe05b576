package org.jawroom.clearance.part;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.fixture.JobDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Job;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class JobPartTest {
  private static final BigDecimal CUBIC_DECIMETRE = BigDecimal.valueOf(200_000_000).pow(3);

  @Test
  void of_oneJaw_liesAgainstTheFixedJawOnTheBed() {
    Vise vise = vise(false);
    List<Part> parts = JobPart.of(vise, job(OptionalLong.empty()));
    assertEquals(List.of(Situation.values()), parts.stream().map(Part::situation).toList());
    Part part = parts.get(0);
    assertEquals("work", part.name());
    assertEquals(Integer.MAX_VALUE - 1, part.rank());
    assertEquals(false, part.handle());
    assertEquals(Interval.of(0, 50 * MM), part.u().over(vise.opening()));
    assertEquals(Interval.of(-60 * MM, 60 * MM), part.v());
    assertEquals(Interval.of(70 * MM, 100 * MM), part.w());
    assertEquals(2 * MM, part.tolerance());
  }

  @Test
  void across_bothJaws_liesAboutTheMiddle() {
    assertEquals(
        Interval.of(-25 * MM, 25 * MM), JobPart.across(vise(true), job(OptionalLong.empty())));
  }

  /** The jaws stand 45 mm above the bed of 70 mm. */
  @Test
  void heights_gripBelowAtAndAboveTheJaws_neverReachBelowTheBed() {
    assertEquals(75 * MM, underside(40 * MM));
    assertEquals(70 * MM, underside(45 * MM));
    assertEquals(70 * MM, underside(45 * MM + 1));
    assertEquals(115 * MM, underside(0));
  }

  @Test
  void steelMass_roundAndOddSizes_isEightKilogramsACubicDecimetre() {
    for (long more : new long[] {0, 1, 500, 1000, 1001}) {
      JobDraft job = new JobDraft();
      job.length = 120 * MM + more;
      job.width = 50 * MM + more / 2;
      job.height = 30 * MM;
      BigDecimal cubic =
          BigDecimal.valueOf(job.length)
              .multiply(BigDecimal.valueOf(job.width))
              .multiply(BigDecimal.valueOf(job.height));
      // A decimetre is 200 000 000 half-nanometres.
      BigDecimal kilograms = cubic.multiply(BigDecimal.valueOf(8)).divide(CUBIC_DECIMETRE);
      assertEquals(0, kilograms.compareTo(JobPart.steelMass(job.build())), "" + more);
    }
  }

  private static long underside(long grip) {
    Interval heights = JobPart.heights(vise(false), job(OptionalLong.of(grip)));
    assertEquals(30 * MM, heights.length());
    return heights.lo();
  }

  private static Job job(OptionalLong grip) {
    return new Job(
        "bracket",
        120 * MM,
        50 * MM,
        30 * MM,
        grip,
        Optional.empty(),
        Dimension.BLANK,
        Optional.empty(),
        List.of(),
        1);
  }

  private static Vise vise(boolean both) {
    ViseDraft draft = new ViseDraft();
    draft.both = both;
    draft.jawWidth = 150 * MM;
    draft.jawHeight = 45 * MM;
    draft.bedHeight = 70 * MM;
    draft.openingMax = 150 * MM;
    draft.tolerance = 2 * MM;
    return draft.build();
  }
}
