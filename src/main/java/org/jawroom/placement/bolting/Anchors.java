package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.ClampParts;
import org.jawroom.geometry.Interval;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Vise;

/**
 * The anchors of one mount, all of which must hold; each chooses its slot by itself.
 *
 * @param all at least one
 * @param nutRoom d: how far from the end of a slot the middle of a nut must stay at least
 */
public record Anchors(List<Anchor> all, long nutRoom) {
  public Anchors {
    all = List.copyOf(all);
    if (all.isEmpty()) {
      throw new IllegalArgumentException("a mount without anchors");
    }
  }

  /**
   * The bolts of a mount without blanks.
   *
   * @param thread d, at most as wide as any of its holes
   */
  public static Anchors ofBolts(Mount mount, long thread) {
    List<Anchor> anchors = new ArrayList<>(mount.bolts().size());
    for (Bolt bolt : mount.bolts()) {
      anchors.add(
          new Anchor(
              bolt.u().length(),
              bolt.v().length(),
              (bolt.holeU().length() - thread) / 2,
              (bolt.holeV().length() - thread) / 2));
    }
    return new Anchors(anchors, thread);
  }

  /**
   * The strap clamps of a vise whose base is known: a slot runs through each, its centre line at
   * least {@code thread} inside the strap's edges, with at least twice that of the strap's length
   * over the slot. Empty if the straps are too small for that.
   *
   * @param room width of a strap beside the base
   * @param thread d, that of the slot
   */
  static Optional<Anchors> ofClamps(Vise vise, long room, long thread) {
    Interval u = ClampParts.alongU(vise);
    long playU = u.length() / 2 - thread;
    long playV = room / 2 - thread;
    if (playU < 0 || playV < 0) {
      return Optional.empty();
    }
    // Exact: reaches, widths and room are whole nanometres, so half of each is whole.
    long middle = u.lo() + u.length() / 2;
    List<Anchor> anchors = new ArrayList<>(2);
    for (Interval v : ClampParts.alongV(vise, room)) {
      anchors.add(new Anchor(middle, v.lo() + room / 2, playU, playV));
    }
    return Optional.of(new Anchors(anchors, thread));
  }
}
