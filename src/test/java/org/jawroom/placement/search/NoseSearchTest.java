package org.jawroom.placement.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.NoseGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.machine.Guard;
import org.junit.jupiter.api.Test;

class NoseSearchTest {
  private static final Guard SHEET =
      Guards.box("sheet", new Box(Interval.ALL, Interval.ALL, Interval.ALL));
  private static final Interval OPENINGS = Interval.of(0, 1);
  private static final Interval HEAD = Interval.of(0, Length.ENDLESS);

  @Test
  void lowest_headOverTheVise_standsItsClearanceAboveTheTop() {
    // Top of the part at 100, clearance 6, tolerances 2 and 1.
    assertEquals(OptionalLong.of(109), lowest(HEAD, 0, Interval.of(50, 500)));
    assertEquals(OptionalLong.of(109), lowest(HEAD, 0, Interval.of(50, 109)));
    assertEquals(OptionalLong.empty(), lowest(HEAD, 0, Interval.of(50, 108)));
    assertEquals(OptionalLong.of(120), lowest(HEAD, 0, Interval.of(120, 500)));
  }

  @Test
  void lowest_besideTheVise_belowAtAndAboveItsClearance() {
    // The head begins at x = 40; the part extends to x = 10 when it stands at 0.
    assertEquals(OptionalLong.of(50), lowest(HEAD, 21, Interval.of(50, 500)));
    assertEquals(OptionalLong.of(109), lowest(HEAD, 22, Interval.of(50, 500)));
  }

  @Test
  void lowest_guardBelowThePartAtEveryHeight_isNoLimit() {
    // Hangs 200 to 300 below the nose: at a nose of 191 its top is at −9, 9 below the part's
    // underside.
    Interval hanging = Interval.of(-300, -200);
    assertEquals(OptionalLong.of(50), lowest(hanging, 0, Interval.of(50, 191)));
    // Higher up it must pass the part: it is clear above from 409 on.
    assertEquals(OptionalLong.empty(), lowest(hanging, 0, Interval.of(50, 192)));
    assertEquals(OptionalLong.of(409), lowest(hanging, 0, Interval.of(50, 500)));
  }

  /** Two sheets without thickness that touch do not hit; one with thickness hits while passing. */
  @Test
  void lowest_sheetPassingASheet_isNoLimitUnlessSomethingIsRequired() {
    assertEquals(OptionalLong.of(50), sheets(60, 60, 0));
    assertEquals(OptionalLong.of(151), sheets(60, 61, 0));
    assertEquals(OptionalLong.of(151), sheets(60, 60, 1));
  }

  /** A part that reaches up without end is hit at every height, those without end included. */
  @Test
  void lowest_partWithoutEnd_isEmpty() {
    assertEquals(OptionalLong.of(590), sheets(60, 500, 0, Length.ENDLESS));
    assertEquals(OptionalLong.empty(), sheets(60, Certainty.FAR, 0, Length.ENDLESS));
  }

  private static OptionalLong sheets(long lo, long hi, long clearance) {
    return sheets(lo, hi, clearance, 500);
  }

  /** A sheet 90 below the nose over a part from {@code lo} to {@code hi}. */
  private static OptionalLong sheets(long lo, long hi, long clearance, long noseMax) {
    Rectangle plan = new Rectangle(Interval.of(-5, 5), Interval.of(-5, 5));
    NoseGuard sheet = new NoseGuard(SHEET, plan, Interval.of(-90, -90), clearance, 0);
    OpeningInterval u = OpeningInterval.constant(Interval.of(0, 10), OPENINGS);
    Part screw =
        NamedPieces.part(
            "screw", 0, false, Situation.CUTTING, u, Interval.of(0, 10), Interval.of(lo, hi), 0);
    return NoseSearch.lowest(
        List.of(sheet),
        List.of(screw),
        Orientation.RIGHT,
        new Place(0, 0),
        OPENINGS,
        Interval.of(50, noseMax));
  }

  @Test
  void lowest_noSuchGuard_isEmpty() {
    assertEquals(
        OptionalLong.empty(),
        NoseSearch.lowest(
            List.of(), List.of(), Orientation.RIGHT, new Place(0, 0), OPENINGS, Interval.of(0, 9)));
  }

  /** The part stands at x = 0; the head begins at x = 40, nearer by {@code shift}. */
  private static OptionalLong lowest(Interval fromNose, long shift, Interval heights) {
    Rectangle plan =
        new Rectangle(Interval.of(shift == 0 ? 0 : 40, 1000), Interval.of(-1000, 1000));
    NoseGuard guard = new NoseGuard(SHEET, plan, fromNose, 6, 2);
    OpeningInterval u = OpeningInterval.constant(Interval.of(0, 10), OPENINGS);
    Part cutting =
        NamedPieces.part(
            "base", 0, false, Situation.CUTTING, u, Interval.of(0, 10), Interval.of(0, 100), 1);
    Part loading =
        NamedPieces.part(
            "handle", 7, true, Situation.LOADING, u, Interval.of(0, 10), Interval.of(0, 900), 1);
    return NoseSearch.lowest(
        List.of(guard),
        List.of(cutting, loading),
        Orientation.RIGHT,
        new Place(shift, 0),
        OPENINGS,
        heights);
  }
}
