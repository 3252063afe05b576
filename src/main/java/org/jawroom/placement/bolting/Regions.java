package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.SweptGuards;
import org.jawroom.clearance.SweptParts;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Slots;

/**
 * Enumerates every turn and mount in which a vise can be bolted to a table, turns in order of
 * preference, then mounts in input order.
 *
 * <p>A mount that needs a blank column is relaxed: the vise may stand anywhere with some of its
 * base over the table (base unknown: anywhere within 10 m) and has no bolts. This is never worse
 * than the truth. Known holes and slots can still refuse such a mount.
 */
public final class Regions {
  private static final long ANYWHERE = 10_000 * Length.MM;
  private static final Comparator<Region> PREFERENCE =
      Comparator.comparing(Region::turn).thenComparing(Region::mountIndex);

  private final PreparedMachine machine;
  private final PreparedVise vise;
  private final SweptGuards guards;
  private final OptionalLong thread;

  private Regions(PreparedMachine machine, PreparedVise vise, SweptGuards guards) {
    this.machine = machine;
    this.vise = vise;
    this.guards = guards;
    this.thread = machine.thread();
  }

  public static List<Region> of(
      PreparedMachine machine, PreparedVise vise, SweptGuards guards, Blanks blanks) {
    Regions builder = new Regions(machine, vise, guards);
    List<Mount> mounts = vise.vise().mounts();
    List<Region> regions = new ArrayList<>(Orientation.ALL.size() * mounts.size());
    for (int index = 0; index < mounts.size(); index++) {
      builder.addMount(index, builder.complete(index, blanks), regions);
    }
    if (mounts.size() > 1) {
      regions.sort(PREFERENCE);
    }
    return regions;
  }

  private void addMount(int index, boolean complete, List<Region> regions) {
    Mount mount = vise.vise().mounts().get(index);
    if (refused(index)) {
      return;
    }
    SweptParts parts = complete ? vise.bolted(index, thread.getAsLong()) : vise.body();
    OptionalLong boltedBy = complete ? thread : OptionalLong.empty();
    Optional<Mount> held = Optional.of(mount);
    for (Orientation turn : Orientation.ALL) {
      if (vise.allows(turn) && machine.allows(turn)) {
        Optional<Strips> places =
            complete
                ? machine.slotted().places(mount, turn, thread.getAsLong())
                : Optional.of(Strips.of(anywhere(turn)));
        if (places.isPresent() && machine.settings().maxOverhang().isPresent()) {
          places = withinOverhang(places.get(), turn);
        }
        if (places.isPresent()) {
          regions.add(new Region(turn, index, held, boltedBy, places.get(), parts, guards));
        }
      }
    }
  }

  /** Whether no column that the mount needs is blank; records those that are. */
  private boolean complete(int index, Blanks blanks) {
    Slots slots = machine.machine().slots();
    if (!vise.hasBlank(index) && slots.width().isKnown() && !slots.pitch().isBlank()) {
      return true;
    }
    Mount mount = vise.vise().mounts().get(index);
    boolean complete = BoltingBlanks.given(slots, blanks);
    for (Bolt bolt : mount.bolts()) {
      complete &= BoltingBlanks.given(mount, bolt, blanks);
    }
    return complete;
  }

  /**
   * Whether the known columns rule the mount out: no slot, a slot too narrow, or a hole too small.
   * A hole exactly as wide as the bolt admits it.
   */
  private boolean refused(int index) {
    Slots slots = machine.machine().slots();
    if (slots.count() == 0) {
      return true;
    }
    if (thread.isEmpty()) {
      return slots.width().isKnown();
    }
    return vise.narrowestHole(index) < thread.getAsLong();
  }

  /** The positions with some of the base over the table top; touching its edge counts. */
  private Rectangle anywhere(Orientation turn) {
    Rectangle top = machine.machine().top();
    return vise.base(turn)
        .map(
            base ->
                new Rectangle(
                    top.x().sweptBy(base.x().negated()), top.y().sweptBy(base.y().negated())))
        .orElse(new Rectangle(Interval.around(0, ANYWHERE), Interval.around(0, ANYWHERE)));
  }

  private Optional<Strips> withinOverhang(Strips places, Orientation turn) {
    return Overhang.allowed(machine.settings(), machine.machine(), vise.vise(), turn)
        .flatMap(places::meet);
  }
}
