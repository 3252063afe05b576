package org.jawroom.clearance.part;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** Parts added to a vise's own: strap clamps, and bolts with a blank grip. */
class ClampPartsTest {

  @Test
  void of_simpleVise_standOnBothSidesOfTheBase() {
    List<Part> expected = new ArrayList<>();
    for (Interval v : List.of(mm(-145, -85), mm(85, 145))) {
      for (Situation situation : Situation.values()) {
        expected.add(
            NamedPieces.part(
                "clamps",
                Integer.MAX_VALUE,
                false,
                situation,
                OpeningInterval.constant(mm(-60, 200), mm(10, 150)),
                v,
                mm(0, 70),
                2 * MM));
      }
    }
    assertEquals(expected, ClampParts.of(vise(), 60 * MM, Certainty.AT_WORST));
  }

  @Test
  void bolts_withoutAGrip_standOnTheBedsHeight() {
    Vise vise = vise();
    Part bolt = BoltParts.of(vise, vise.mounts().get(0), 12 * MM).get(0);
    assertEquals(
        NamedPieces.part(
            "bolts",
            Integer.MAX_VALUE,
            false,
            Situation.CUTTING,
            OpeningInterval.constant(mm(60, 80), mm(10, 150)),
            mm(-104, -76),
            mm(0, 70 + 24),
            2 * MM),
        bolt);
  }

  private static Vise vise() {
    ViseDraft draft = new ViseDraft();
    draft.jawWidth = 150 * MM;
    draft.jawHeight = 45 * MM;
    draft.bedHeight = 70 * MM;
    draft.openingMin = 10 * MM;
    draft.openingMax = 150 * MM;
    draft.baseWidth = Dimension.of(170 * MM);
    draft.rearReach = Dimension.of(60 * MM);
    draft.frontReach = Dimension.of(200 * MM);
    draft.boltSpacing = Dimension.of(180 * MM);
    draft.boltU = Dimension.of(70 * MM);
    draft.holeU = Dimension.of(8 * MM);
    draft.holeV = Dimension.of(16 * MM);
    draft.boltGrip = OptionalLong.empty();
    draft.tolerance = 2 * MM;
    return draft.build();
  }

  private static Interval mm(long lo, long hi) {
    return Interval.of(lo * MM, hi * MM);
  }
}
