package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Vise;

/** The bolts of a mount as parts: one box per bolt, covering every position its hole allows. */
public final class BoltParts {

  private BoltParts() {}

  /**
   * The bolts of a mount without blank dimensions, in both situations.
   *
   * @param thread d, the diameter of the bolt that goes with the slots
   */
  public static List<Part> of(Vise vise, Mount mount, long thread) {
    long top = vise.boltGrip().orElse(vise.base().bedHeight()) + 2 * thread;
    List<Part> parts = new ArrayList<>();
    for (Bolt bolt : mount.bolts()) {
      Interval u = Interval.around(bolt.u().length(), (bolt.holeU().length() + thread) / 2);
      Interval v = Interval.around(bolt.v().length(), (bolt.holeV().length() + thread) / 2);
      for (Situation situation : Situation.values()) {
        parts.add(
            Part.of(
                PartRole.BOLT,
                situation,
                OpeningInterval.constant(u, vise.opening()),
                v,
                Interval.of(0, top),
                vise.provenance().tolerance()));
      }
    }
    return parts;
  }
}
