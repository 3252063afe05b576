package org.jawroom.clearance.part;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Job;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class JobPartTest {

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
