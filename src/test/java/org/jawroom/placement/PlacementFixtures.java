package org.jawroom.placement;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Fastening;
import org.jawroom.placement.pairing.MarginBounds;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Play;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** Placements and outcomes for tests that read them. */
public final class PlacementFixtures {
  private PlacementFixtures() {}

  /** A mount of that name with M12 bolts, its anchors left out. */
  public static Fastening bolted(String mount) {
    return new Fastening(0, mount, false, OptionalLong.of(12 * Length.MM), Optional.empty());
  }

  /** Strap clamps, their anchors left out. */
  public static Fastening clamped() {
    return new Fastening(1, Fastening.CLAMPS, true, OptionalLong.empty(), Optional.empty());
  }

  /** A settable place of the base bolts, handle to the front, at which nothing can be hit. */
  public static Recommendation place(
      long x, long y, List<Integer> slots, Optional<Play> play, OptionalLong noseNotBelow) {
    return new Recommendation(
        Orientation.FRONT,
        x,
        y,
        bolted("base bolts"),
        slots,
        Interval.of(0, Length.MM),
        Optional.empty(),
        true,
        OptionalLong.empty(),
        0,
        OptionalLong.empty(),
        play,
        noseNotBelow);
  }

  /** An outcome without a place and without any number. */
  public static Outcome outcome(Machine machine, Vise vise, Verdict verdict) {
    return new Outcome(
        machine,
        vise,
        verdict,
        OptionalLong.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        OptionalLong.empty(),
        Optional.empty(),
        false,
        MarginBounds.NONE,
        List.of(),
        List.of(),
        Optional.empty());
  }
}
