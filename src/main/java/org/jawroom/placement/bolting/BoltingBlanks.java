package org.jawroom.placement.bolting;

import org.jawroom.clearance.Blanks;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;

/** The columns that it takes to know where a mount can be bolted down. */
public final class BoltingBlanks {
  private BoltingBlanks() {}

  /** Whether it is known how wide the slots are and where they lie; notes the columns if not. */
  public static boolean given(Slots slots, Blanks blanks) {
    boolean width = blanks.given(slots.width(), Column.SLOT_WIDTH);
    return (!slots.needsPitch() || blanks.given(slots.pitch(), Column.SLOT_PITCH)) & width;
  }

  /**
   * Whether place and size of a bolt's hole are known; notes the columns if not.
   *
   * @param mount the one that {@code bolt} belongs to
   */
  public static boolean given(Mount mount, Bolt bolt, Blanks blanks) {
    return blanks.given(bolt.u(), Column.BOLT_U)
        & blanks.given(bolt.v(), Column.BOLT_SPACING)
        & blanks.given(bolt.holeU(), mount.own() ? Column.BOLT_HOLE_U : Column.HOLE_U)
        & blanks.given(bolt.holeV(), mount.own() ? Column.BOLT_HOLE_V : Column.HOLE_V);
  }

  /** Whether the extent of a base is known, as straps beside it need; notes the columns if not. */
  public static boolean given(Base base, Blanks blanks) {
    return blanks.given(base.width(), Column.BASE_WIDTH)
        & blanks.given(base.rearReach(), Column.REAR_REACH)
        & blanks.given(base.frontReach(), Column.FRONT_REACH);
  }
}
