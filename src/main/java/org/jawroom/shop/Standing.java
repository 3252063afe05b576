package org.jawroom.shop;

import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.Require;
import org.jawroom.shop.vise.Vise;

/**
 * A vise that stands on a machine now.
 *
 * @param mount the name of the mount that holds it
 * @param provenance of the two measures; its tolerance is how far each may be off
 */
public record Standing(
    Machine machine, Vise vise, TapedPlace place, String mount, Provenance provenance) {
  public Standing {
    Require.named("mount", mount);
  }

  /** The x of the vise frame's origin in the table frame, as measured. */
  public long x() {
    return place.x(machine, vise);
  }

  /** The y likewise. */
  public long y() {
    return place.y(machine, vise);
  }

  /** How far it may stand off each way. */
  public long tolerance() {
    return provenance.tolerance();
  }
}
