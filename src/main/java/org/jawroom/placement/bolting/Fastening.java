package org.jawroom.placement.bolting;

import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.placement.bolting.slot.Anchors;
import org.jawroom.shop.vise.Mount;

/**
 * How a vise is fastened: by the bolts of a mount or by strap clamps.
 *
 * @param index in the order of the mounts, clamps last
 * @param name of the mount
 * @param clamped whether by strap clamps
 * @param thread diameter of the bolts; empty for clamps and if a blank leaves the bolts out
 * @param anchors empty if a blank leaves open where the mount holds
 */
public record Fastening(
    int index, String name, boolean clamped, OptionalLong thread, Optional<Anchors> anchors) {

  /** The name of the mount that strap clamps make. */
  public static final String CLAMPS = Mount.CLAMPS;
}
