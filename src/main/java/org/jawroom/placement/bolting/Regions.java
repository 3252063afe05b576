package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.obstacle.SweptGuards;
import org.jawroom.clearance.obstacle.SweptParts;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.slot.Anchors;
import org.jawroom.placement.bolting.slot.Slotted;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;

/**
 * Enumerates every turn and mount in which a vise can be bolted to a table, turns in order of
 * preference, then mounts in input order.
 *
 * <p>At best a mount that needs a blank column is relaxed: the vise may stand anywhere with some of
 * its base over the table (base unknown: anywhere within 10 m) and has no bolts. This is never
 * worse than the truth. Known holes and slots can still refuse such a mount.
 */
public final class Regions {
  private static final long ANYWHERE = 10_000 * Length.MM;
  private static final Comparator<Region> PREFERENCE =
      Comparator.comparing(Region::turn).thenComparingInt(region -> region.fastening().index());

  private final PreparedMachine machine;
  private final PreparedVise vise;
  private final SweptGuards guards;
  private final List<Orientation> turns = new ArrayList<>(Orientation.ALL.size());

  private Regions(PreparedMachine machine, PreparedVise vise, SweptGuards guards) {
    this.machine = machine;
    this.vise = vise;
    this.guards = guards;
    for (Orientation turn : Orientation.ALL) {
      if (vise.allows(turn) && machine.allows(turn)) {
        turns.add(turn);
      }
    }
  }

  public static List<Region> of(
      PreparedMachine machine, PreparedVise vise, SweptGuards guards, Blanks blanks) {
    Regions builder = new Regions(machine, vise, guards);
    List<Mount> mounts = vise.vise().mounts();
    List<Region> regions = new ArrayList<>(Orientation.ALL.size() * (mounts.size() + 1));
    for (int index = 0; index < mounts.size(); index++) {
      builder.addMount(index, builder.complete(index, blanks), regions);
    }
    if (vise.vise().hasClampMount()) {
      builder.addClamps(mounts.size(), builder.clampsComplete(blanks), regions);
    }
    if (mounts.size() > 1 || vise.vise().hasClampMount()) {
      regions.sort(PREFERENCE);
    }
    return regions;
  }

  private void addMount(int index, boolean complete, List<Region> regions) {
    Mount mount = vise.vise().mounts().get(index);
    OptionalLong thread = machine.threadFor(vise.narrowestHole(index));
    if (refused(thread)) {
      return;
    }
    Optional<Anchors> anchors =
        complete ? Optional.of(vise.anchors(index, thread.getAsLong())) : Optional.empty();
    Fastening fastening =
        new Fastening(
            index, mount.name(), false, complete ? thread : OptionalLong.empty(), anchors);
    SweptParts parts = complete ? vise.bolted(index, thread.getAsLong()) : vise.body();
    for (Orientation turn : turns) {
      add(turn, fastening, Region.EVERYWHERE, parts, regions);
    }
  }

  private void addClamps(int index, boolean complete, List<Region> regions) {
    OptionalLong thread = machine.threadFor(Length.ENDLESS);
    if (refused(thread) || thread.isPresent() && tooShortForClamps(thread.getAsLong())) {
      return;
    }
    Optional<Anchors> anchors =
        complete
            ? Optional.of(
                Anchors.ofClamps(
                    vise.vise(),
                    machine.settings().clampRoom(),
                    thread.getAsLong(),
                    machine.certainty()))
            : Optional.empty();
    if (anchors.isPresent() && anchors.get().all().get(0).u().isReversed()) {
      return;
    }
    Fastening fastening =
        new Fastening(index, Fastening.CLAMPS, true, OptionalLong.empty(), anchors);
    SweptParts parts = complete ? vise.clamped() : vise.body();
    for (Orientation turn : turns) {
      Optional<Rectangle> onTable =
          complete
              ? Overhang.clamped(
                  machine.machine(), vise.vise(), machine.settings(), turn, machine.certainty())
              : Optional.of(Region.EVERYWHERE);
      onTable.ifPresent(places -> add(turn, fastening, places, parts, regions));
    }
  }

  /** Whether no strap holds in the slots, whatever the base is. */
  private boolean tooShortForClamps(long thread) {
    return Slotted.length(machine.machine()) < 2 * thread
        || machine.settings().clampRoom() < 2 * thread;
  }

  private void add(
      Orientation turn,
      Fastening fastening,
      Rectangle onTable,
      SweptParts parts,
      List<Region> regions) {
    Optional<Strips> held =
        fastening
            .anchors()
            .map(anchors -> machine.slotted().places(anchors, turn))
            .orElseGet(
                () ->
                    Optional.of(Strips.of(machine.machine().slots().direction(), anywhere(turn))));
    Optional<Rectangle> allowed =
        machine.settings().maxOverhang().isPresent()
            ? Overhang.allowed(
                machine.settings(), machine.machine(), vise.vise(), turn, machine.certainty())
            : Optional.of(Region.EVERYWHERE);
    if (held.isPresent() && allowed.isPresent()) {
      Optional<Strips> places = held;
      if (fastening.clamped() || machine.settings().maxOverhang().isPresent()) {
        places = held.get().meet(onTable).flatMap(left -> left.meet(allowed.get()));
      }
      places.ifPresent(
          left ->
              regions.add(
                  new Region(turn, fastening, left, onTable, allowed.get(), parts, guards)));
    }
  }

  /**
   * Whether a mount holds as its readings say; false if one of them is blank and it is relaxed
   * instead. Records the columns of open readings.
   */
  private boolean complete(int index, Blanks blanks) {
    Slots slots = machine.machine().slots();
    Mount mount = vise.vise().mounts().get(index);
    if (!vise.isOpen(index)
        && slots.width().isKnown()
        && !(slots.needsPitch() && slots.pitch().isOpen())) {
      return true;
    }
    boolean complete = BoltingBlanks.given(slots, blanks);
    for (Bolt bolt : mount.bolts()) {
      complete &= BoltingBlanks.given(mount, bolt, blanks);
    }
    return complete || machine.certainty() == Certainty.AT_WORST;
  }

  /** The same for strap clamps. */
  private boolean clampsComplete(Blanks blanks) {
    boolean complete =
        BoltingBlanks.given(machine.machine().slots(), blanks)
            & BoltingBlanks.given(vise.vise().base(), blanks);
    return complete || machine.certainty() == Certainty.AT_WORST;
  }

  /**
   * Whether the known columns (at worst: any) rule the mount out: no slot, a slot too narrow, or a
   * hole too small for every bolt that may be tried. A hole exactly as wide as the bolt admits it.
   */
  private boolean refused(OptionalLong thread) {
    Slots slots = machine.machine().slots();
    return slots.count() == 0
        || thread.isEmpty()
            && (slots.width().isKnown() || machine.certainty() == Certainty.AT_WORST);
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
}
