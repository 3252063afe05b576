package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.wording.Words;
import org.jawroom.shop.vise.Vise;

/**
 * The setup steps, as common in the trade. Reading the fixed jaw only, one bolt as a pivot,
 * sweeping again after tightening: several manuals. Indicator reading: 0.013 mm for precision work
 * from one text, 0.025 mm common practice, no source.
 */
public record Steps(Vise vise, Recommendation place) {

  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Lock out. Clean table top, slots and the vise's underside; stone off burrs only, never the"
            + " surface; wipe dry.");
    lines.add("Slide the T-nuts in: they run free, and each bolt turns in by hand.");
    vise.swivel().ifPresent(swivel -> lines.add("Set the swivel to 0, jaws square; lock it."));
    lines.add("Set the vise down as taped above, handle to the " + place.handleTo().word() + ".");
    lines.add("Snug the pivot named above; leave the others loose.");
    lines.add(
        "Spindle off, indicator in it, "
            + tip()
            + ". Sweep along "
            + jaw().name()
            + " by moving the"
            + " axis; tap as the lever says; repeat.");
    lines.add(
        "Tighten in turn, in two or three rounds, to the torque above. Sweep again: 0.025 mm (0.001 in)"
            + " over the jaw is ordinary, 0.013 mm (0.0005 in) precision work.");
    vise.swivel()
        .ifPresent(
            swivel ->
                lines.add(
                    "Swing it to "
                        + Words.angle(swivel)
                        + "; lock the bolts of the swivel. Every gap overleaf is at that angle."));
    lines.add(
        vise.handle().onWhileCutting() || handle().isEmpty()
            ? "Check every gap overleaf."
            : "Take the handle off. Check every gap overleaf.");
    return lines;
  }

  private String tip() {
    return vise.jaws().both()
        ? "its tip on a ground bar held between the jaws (both move)"
        : "its tip on the FIXED jaw only";
  }

  /** The axis along the jaws. */
  private Axis jaw() {
    return place.handleTo().uAxis().across();
  }

  /** The tables have no columns for keys under the base. */
  public static Item keys() {
    return new Item(
        "Keys:",
        "out, if it has any (the tables list none), unless they enter the slots freely at this place;"
            + " sweep the jaw all the same.");
  }

  /** Where the handle is and how it is turned. */
  public Optional<String> handle() {
    if (!vise.simple() || vise.handle().radius().isNone()) {
      return Optional.empty();
    }
    return Optional.of(
        vise.handle().fullSwing()
            ? "worked all the way round"
            : "worked back and forth over the top");
  }
}
