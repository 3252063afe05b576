package org.jawroom.clearance.part;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/** The bolts of a mount as parts: one box per bolt, covering every position its hole allows. */
public final class BoltParts {

  private BoltParts() {}

  /**
   * The bolts of a mount, in both situations; at best a bolt whose values have no point in common
   * is left out.
   *
   * @param thread d, the diameter of the bolts
   */
  public static List<Part> of(Vise vise, Mount mount, long thread, Certainty certainty) {
    long top = vise.boltGrip().orElse(vise.base().bedHeight()) + 2 * thread;
    List<Part> parts = new ArrayList<>();
    for (Bolt bolt : mount.bolts()) {
      Ends u = around(bolt.u(), bolt.holeU(), thread, certainty);
      Ends v = around(bolt.v(), bolt.holeV(), thread, certainty);
      for (Situation situation : Situation.values()) {
        if (!u.isReversed() && !v.isReversed()) {
          parts.add(
              Part.of(
                  PartRole.BOLT,
                  situation,
                  new OpeningInterval(u, u, vise.opening()),
                  Interval.of(v.lo(), v.hi()),
                  Interval.of(0, top),
                  vise.provenance().tolerance()));
        }
      }
    }
    return parts;
  }

  /** The bolts of a mount without open readings. */
  public static List<Part> of(Vise vise, Mount mount, long thread) {
    return of(vise, mount, thread, Certainty.AT_WORST);
  }

  private static Ends around(Dimension middle, Dimension hole, long thread, Certainty certainty) {
    Interval sizes = Certainty.sizes(hole);
    Interval half = Interval.of((sizes.lo() + thread) / 2, (sizes.hi() + thread) / 2);
    Interval at = Certainty.positions(middle);
    return certainty.ends(at.sweptBy(half.negated()), at.sweptBy(half));
  }
}
