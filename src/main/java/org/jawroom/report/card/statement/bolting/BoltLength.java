package org.jawroom.report.card.statement.bolting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.standards.BoltStock;
import org.jawroom.standards.TNut;
import org.jawroom.standards.TSlot;
import org.jawroom.standards.Washer;

/**
 * The length of the bolt that goes through washer and flange into the T-nut, measured under its
 * head, as a function of t: the depth of the nut's top below the table top with the nut pulled up
 * against the slot's lips.
 *
 * <p>With G the flange (± its tolerance e), w the washer, d the thread and h the nut's height, the
 * bolt goes into the nut by length − w − G − t. It must engage at least d, and must not come out
 * under the nut, where it would lift the nut and break the slot's lip: t + w + (G + e) + d ≤ length
 * ≤ t + w + (G − e) + h.
 *
 * @param addLeast the least length minus t
 * @param addMost the greatest length minus t; less than {@code addLeast} if the flange's tolerance
 *     is too wide for any length to be right
 * @param depth the range of t in the series of slots; empty for a slot outside it
 */
record BoltLength(long addLeast, long addMost, Optional<Interval> depth) {

  private static final long TENTH = Length.MM / 10;

  /** A bolt to order and the range of depths it serves, rounded inward to 0.1 mm. */
  record Choice(int millimetres, Interval depth) {}

  /** {@code grip} blank: the lengths without the flange. */
  static BoltLength of(TNut nut, OptionalLong grip, long tolerance, long slotWidth) {
    long d = nut.thread() * Length.MM;
    long h = nut.height() * TENTH;
    long neck = h - nut.baseHeight() * TENTH;
    long thick = Washer.thickness(d) + grip.orElse(0);
    long off = grip.isPresent() ? tolerance : 0;
    return new BoltLength(
        thick + off + d,
        thick - off + h,
        TSlot.metric(slotWidth)
            .map(slot -> Interval.of(slot.throatLeast() - neck, slot.throatMost() - neck)));
  }

  /** Whether some length is right at every depth. */
  boolean possible() {
    return addLeast <= addMost;
  }

  /** The common lengths that serve some of the possible depths, shortest first. */
  List<Choice> choices() {
    List<Choice> choices = new ArrayList<>();
    if (depth.isPresent() && possible()) {
      for (int millimetres : BoltStock.METRIC) {
        long length = millimetres * Length.MM;
        long lo = Length.ceilTo(Math.max(depth.get().lo(), length - addMost), TENTH);
        long hi = Length.floorTo(Math.min(depth.get().hi(), length - addLeast), TENTH);
        if (lo <= hi) {
          choices.add(new Choice(millimetres, Interval.of(lo, hi)));
        }
      }
    }
    return choices;
  }
}
