package org.jawroom.placement.bolting.slot;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.part.ClampParts;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/** The anchors of one mount, all of which must hold; each chooses its slot by itself. */
public final class Anchors {
  private static final int AXES = 2;

  private final List<Anchor> all;
  private final long nutRoom;

  /** See {@link #in}; computed on first use, by any thread, always with the same result. */
  private final TurnedAnchors[] turned = new TurnedAnchors[Orientation.ALL.size() * AXES];

  /**
   * @param all at least one
   * @param nutRoom d: how far from the end of a slot the middle of a nut must stay at least
   */
  public Anchors(List<Anchor> all, long nutRoom) {
    this.all = List.copyOf(all);
    this.nutRoom = nutRoom;
    if (all.isEmpty()) {
      throw new IllegalArgumentException("a mount without anchors");
    }
  }

  /** The anchors in the order of the mount. */
  public List<Anchor> all() {
    return all;
  }

  /** See {@link #Anchors}. */
  public long nutRoom() {
    return nutRoom;
  }

  /** The anchors of a vise in one turn, seen from slots along X or Y. */
  TurnedAnchors in(Orientation turn, Axis slots) {
    int index = turn.ordinal() * AXES + slots.ordinal();
    TurnedAnchors made = turned[index];
    if (made == null) {
      made = new TurnedAnchors(all, turn, slots);
      turned[index] = made;
    }
    return made;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Anchors same && all.equals(same.all) && nutRoom == same.nutRoom;
  }

  @Override
  public int hashCode() {
    return Objects.hash(all, nutRoom);
  }

  @Override
  public String toString() {
    return all + ", nuts " + nutRoom + " from the ends of the slots";
  }

  /**
   * The bolts of a mount without blanks.
   *
   * @param thread d, at most as wide as any of its holes
   */
  public static Anchors ofBolts(Mount mount, long thread) {
    return ofBolts(mount, thread, Certainty.AT_WORST);
  }

  /**
   * The bolts of a mount.
   *
   * @param certainty at worst the places that all values of its readings allow, at best those that
   *     some value allows
   */
  public static Anchors ofBolts(Mount mount, long thread, Certainty certainty) {
    List<Anchor> anchors = new ArrayList<>(mount.bolts().size());
    for (Bolt bolt : mount.bolts()) {
      anchors.add(
          new Anchor(
              places(bolt.u(), bolt.holeU(), thread, certainty),
              places(bolt.v(), bolt.holeV(), thread, certainty)));
    }
    return new Anchors(anchors, thread);
  }

  /** How far the bolt may stand from its place along one axis. */
  private static Ends places(Dimension middle, Dimension hole, long thread, Certainty certainty) {
    Interval at = Certainty.positions(middle);
    Interval size = Certainty.sizes(hole);
    return certainty == Certainty.AT_WORST
        ? new Ends(at.hi() - (size.lo() - thread) / 2, at.lo() + (size.lo() - thread) / 2)
        : new Ends(at.lo() - (size.hi() - thread) / 2, at.hi() + (size.hi() - thread) / 2);
  }

  /**
   * The strap clamps of a vise: a slot runs through each, its centre line at least {@code thread}
   * inside the strap's edges, with at least twice that of the strap's length over the slot.
   *
   * @param room width of a strap beside the base
   * @param thread d, that of the slot
   */
  public static Anchors ofClamps(Vise vise, long room, long thread, Certainty certainty) {
    // A nut may stand where every value (at best: some value) of the readings has the strap.
    Certainty opposite = certainty == Certainty.AT_WORST ? Certainty.AT_BEST : Certainty.AT_WORST;
    Ends u = inside(ClampParts.alongU(vise, opposite), thread);
    Ends v = inside(ClampParts.alongV(vise, room, opposite), thread);
    return new Anchors(
        List.of(new Anchor(u, new Ends(-v.hi(), -v.lo())), new Anchor(u, v)), thread);
  }

  private static Ends inside(Ends strap, long thread) {
    return new Ends(strap.lo() + thread, strap.hi() - thread);
  }
}
