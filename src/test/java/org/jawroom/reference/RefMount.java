package org.jawroom.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Slots;
import org.jawroom.shop.Vise;

/**
 * One mount on one machine.
 *
 * @param index in input order
 * @param blank whether it needs a blank column
 * @param refused whether no bolt of a known thread passes, or no slot is usable
 * @param thread of its bolts, half-nanometres; −1 if the slot width is blank
 */
record RefMount(
    Machine machine, Mount mount, int index, boolean blank, boolean refused, long thread) {

  /** DIN 508 (transcribed): slot width and the thread that goes with it, mm. */
  private static final long[][] THREADS = {
    {5, 4}, {6, 5}, {8, 6}, {10, 8}, {12, 10}, {14, 12}, {18, 16}, {22, 20}, {28, 24}, {36, 30},
    {42, 36}, {48, 42}, {54, 48}
  };

  /** The thread for a slot's width, or 0 if no bolt fits. */
  static long thread(long slotWidth) {
    long d = 0;
    for (long[] row : THREADS) {
      if (slotWidth >= row[0] * Length.MM) {
        d = row[1] * Length.MM;
      }
    }
    return d;
  }

  static RefMount of(Machine machine, Mount mount, int index, Set<Column> missing) {
    Slots slots = machine.slots();
    boolean blank = false;
    long d = -1;
    if (slots.width().isBlank()) {
      missing.add(Column.SLOT_WIDTH);
      blank = true;
    } else {
      d = thread(slots.width().length());
    }
    if (slots.needsPitch() && slots.pitch().isBlank()) {
      missing.add(Column.SLOT_PITCH);
      blank = true;
    }
    boolean refused = slots.count() == 0 || d == 0;
    for (Bolt bolt : mount.bolts()) {
      blank |= ask(bolt.v(), Column.BOLT_SPACING, missing);
      blank |= ask(bolt.u(), Column.BOLT_U, missing);
      blank |= ask(bolt.holeU(), mount.own() ? Column.BOLT_HOLE_U : Column.HOLE_U, missing);
      blank |= ask(bolt.holeV(), mount.own() ? Column.BOLT_HOLE_V : Column.HOLE_V, missing);
      refused |= tooSmall(bolt.holeU(), d) || tooSmall(bolt.holeV(), d);
    }
    return new RefMount(machine, mount, index, blank, refused, d);
  }

  private static boolean ask(Dimension dimension, Column column, Set<Column> missing) {
    if (dimension.isBlank()) {
      missing.add(column);
    }
    return dimension.isBlank();
  }

  private static boolean tooSmall(Dimension hole, long d) {
    return hole.isKnown() && hole.length() < d;
  }

  /** The boxes of its bolts; none for a mount with a blank. */
  List<RefPart> boltParts(Vise vise) {
    return blank || refused
        ? List.of()
        : mount.bolts().stream().map(bolt -> RefVise.bolt(vise, bolt, thread)).toList();
  }

  private boolean slotsAlongX() {
    return machine.slots().direction() == Axis.X;
  }

  /** The centre line of slot {@code j}, 1 at the front or left, on the axis across the slots. */
  private long slotAt(int j) {
    Slots slots = machine.slots();
    long edge = -(slotsAlongX() ? machine.tableWidth() : machine.tableLength()) / 2;
    if (!slots.positions().isEmpty()) {
      return edge + slots.positions().get(j - 1);
    }
    int n = slots.count();
    long pitch = n == 1 ? 0 : slots.pitch().length();
    if (slots.first().isPresent()) {
      return edge + slots.first().getAsLong() + (j - 1) * pitch;
    }
    return (2L * j - (n + 1)) * pitch / 2;
  }

  private long slotLength() {
    return machine
        .slots()
        .length()
        .orElse(slotsAlongX() ? machine.tableLength() : machine.tableWidth());
  }

  /** A bolt in coordinates along and across the slots. */
  private record Seen(long along, long playAlong, long across, long playAcross) {}

  private Seen seen(Bolt bolt, Facing facing) {
    long u = bolt.u().length();
    long v = bolt.v().length();
    long playU = (bolt.holeU().length() - thread) / 2;
    long playV = (bolt.holeV().length() - thread) / 2;
    long playX = facing.alongX() ? playU : playV;
    long playY = facing.alongX() ? playV : playU;
    return slotsAlongX()
        ? new Seen(facing.x(u, v), playX, facing.y(u, v), playY)
        : new Seen(facing.y(u, v), playY, facing.x(u, v), playX);
  }

  /** Where this mount holds, ignoring all obstacles; for a mount with a blank: {@code anywhere}. */
  RefRegion holds(Orientation turn, Span anywhereX, Span anywhereY) {
    if (refused) {
      return new RefRegion(turn, this, List.of(), List.of());
    }
    if (blank) {
      return new RefRegion(turn, this, List.of(anywhereX), List.of(anywhereY));
    }
    Facing facing = Facing.of(turn);
    List<Span> along = List.of(Span.ALL);
    List<Span> across = List.of(Span.ALL);
    for (Bolt bolt : mount.bolts()) {
      Seen seen = seen(bolt, facing);
      long reach = slotLength() / 2 + seen.playAlong;
      along = RefRegion.cut(along, new Span(-reach - seen.along, reach - seen.along));
      List<Span> next = new ArrayList<>();
      for (int j = 1; j <= machine.slots().count(); j++) {
        long at = slotAt(j) - seen.across;
        next.addAll(RefRegion.cut(across, new Span(at - seen.playAcross, at + seen.playAcross)));
      }
      across = RefRegion.merged(next);
    }
    return slotsAlongX()
        ? new RefRegion(turn, this, along, across)
        : new RefRegion(turn, this, across, along);
  }

  /** The slot of each bolt at (x, y): the nearest within reach, ties to the lowest number. */
  List<Integer> slots(Orientation turn, long x, long y) {
    Facing facing = Facing.of(turn);
    long place = slotsAlongX() ? y : x;
    return mount.bolts().stream()
        .map(
            bolt -> {
              Seen seen = seen(bolt, facing);
              int best = 0;
              for (int j = 1; j <= machine.slots().count(); j++) {
                long off = Math.abs(place + seen.across - slotAt(j));
                if (off <= seen.playAcross
                    && (best == 0 || off < Math.abs(place + seen.across - slotAt(best)))) {
                  best = j;
                }
              }
              return best;
            })
        .toList();
  }

  /** Where every bolt stays within its assigned slot. */
  RefRegion holdsIn(Orientation turn, List<Integer> chosen) {
    Facing facing = Facing.of(turn);
    List<Span> along = alongSlots(holds(turn, Span.ALL, Span.ALL));
    List<Span> across = List.of(Span.ALL);
    for (int i = 0; i < chosen.size(); i++) {
      Seen seen = seen(mount.bolts().get(i), facing);
      long at = slotAt(chosen.get(i)) - seen.across;
      across = RefRegion.cut(across, new Span(at - seen.playAcross, at + seen.playAcross));
    }
    return slotsAlongX()
        ? new RefRegion(turn, this, along, across)
        : new RefRegion(turn, this, across, along);
  }

  private List<Span> alongSlots(RefRegion region) {
    return slotsAlongX() ? region.xs() : region.ys();
  }
}
