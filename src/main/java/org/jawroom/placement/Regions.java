package org.jawroom.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.BoltParts;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.SweptGuards;
import org.jawroom.clearance.SweptParts;
import org.jawroom.clearance.TNut;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.Turn;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Slots;
import org.jawroom.shop.Vise;

/**
 * Every turn and mount in which a vise can be bolted to a table at all, turns in order of
 * preference, then mounts in input order.
 *
 * <p>A mount that needs a blank column gives the vise all the places that leave some of its base
 * over the table (base unknown: anywhere within 10 m) and has no bolts, which is never worse than
 * the truth; what is known of its holes and of the slots still refuses it.
 */
final class Regions {
  private static final long ANYWHERE = 10_000 * Length.MM;

  private final Settings settings;
  private final Machine machine;
  private final Setup setup;
  private final Vise vise;
  private final SweptParts body;
  private final SweptGuards guards;
  private final OptionalLong thread;

  private Regions(
      Settings settings,
      Machine machine,
      Setup setup,
      Vise vise,
      SweptParts body,
      SweptGuards guards) {
    this.settings = settings;
    this.machine = machine;
    this.setup = setup;
    this.vise = vise;
    this.body = body;
    this.guards = guards;
    Dimension width = machine.slots().width();
    this.thread = width.isKnown() ? TNut.boltFor(width.length()) : OptionalLong.empty();
  }

  static List<Region> of(
      Settings settings,
      Machine machine,
      Setup setup,
      Vise vise,
      SweptParts body,
      SweptGuards guards,
      Blanks blanks) {
    Regions builder = new Regions(settings, machine, setup, vise, body, guards);
    List<Region> regions = new ArrayList<>();
    for (int index = 0; index < vise.mounts().size(); index++) {
      builder.addMount(index, builder.complete(vise.mounts().get(index), blanks), regions);
    }
    regions.sort(Comparator.comparing(Region::turn).thenComparing(Region::mountIndex));
    return regions;
  }

  private void addMount(int index, boolean complete, List<Region> regions) {
    Mount mount = vise.mounts().get(index);
    if (refused(mount)) {
      return;
    }
    SweptParts parts =
        complete
            ? body.with(
                BoltParts.of(vise, mount, thread.getAsLong()).stream()
                    .map(bolt -> bolt.raised(setup.riser()))
                    .toList())
            : body;
    OptionalLong boltedBy = complete ? thread : OptionalLong.empty();
    for (Turn turn : Turn.values()) {
      if (vise.turns().contains(turn) && machine.turns().contains(turn)) {
        List<Rectangle> places =
            withinOverhang(
                complete
                    ? Slotted.of(machine).places(mount, turn, thread.getAsLong())
                    : List.of(anywhere(turn)),
                turn);
        if (!places.isEmpty()) {
          regions.add(new Region(turn, index, Optional.of(mount), boltedBy, places, parts, guards));
        }
      }
    }
  }

  /** Whether no column that the mount needs is blank; notes those that are. */
  private boolean complete(Mount mount, Blanks blanks) {
    Slots slots = machine.slots();
    boolean complete = blanks.given(slots.width(), Column.SLOT_WIDTH);
    if (slots.needsPitch()) {
      complete &= blanks.given(slots.pitch(), Column.SLOT_PITCH);
    }
    for (Bolt bolt : mount.bolts()) {
      complete &=
          blanks.given(bolt.u(), Column.BOLT_U)
              & blanks.given(bolt.v(), Column.BOLT_SPACING)
              & blanks.given(bolt.holeU(), mount.own() ? Column.BOLT_HOLE_U : Column.HOLE_U)
              & blanks.given(bolt.holeV(), mount.own() ? Column.BOLT_HOLE_V : Column.HOLE_V);
    }
    return complete;
  }

  /** Whether what is known rules the mount out: no slot, a slot too narrow, a hole too small. */
  private boolean refused(Mount mount) {
    if (machine.slots().count() == 0) {
      return true;
    }
    if (thread.isEmpty()) {
      return machine.slots().width().isKnown();
    }
    return mount.bolts().stream()
        .anyMatch(bolt -> tooSmall(bolt.holeU()) || tooSmall(bolt.holeV()));
  }

  /** A hole exactly as wide as the bolt admits it. */
  private boolean tooSmall(Dimension hole) {
    return hole.isKnown() && hole.length() < thread.getAsLong();
  }

  /** Where some of the base is over the table top, touching its edge included. */
  private Rectangle anywhere(Turn turn) {
    return Footprint.base(vise, turn)
        .map(
            base ->
                new Rectangle(
                    halfTable(machine.tableLength()).sweptBy(base.x().negated()),
                    halfTable(machine.tableWidth()).sweptBy(base.y().negated())))
        .orElse(new Rectangle(Interval.around(0, ANYWHERE), Interval.around(0, ANYWHERE)));
  }

  private List<Rectangle> withinOverhang(List<Rectangle> places, Turn turn) {
    Optional<Rectangle> allowed = Overhang.allowed(settings, machine, vise, turn);
    return places.stream()
        .map(place -> allowed.flatMap(place::meet))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Interval halfTable(long size) {
    return Interval.around(0, size / 2);
  }
}
