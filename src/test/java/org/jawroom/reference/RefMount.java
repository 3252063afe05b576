package org.jawroom.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/**
 * One mount on one machine: the bolts of a name, or the two strap clamps.
 *
 * @param index in input order, the clamps last
 * @param blank whether it needs a blank column
 * @param refused whether known holes, slots or sizes already rule it out
 * @param thread of its studs, half-nanometres; 0 if unknown or refused
 * @param studs where the axis of each bolt or clamp stud may stand in the vise frame; empty if the
 *     mount is blank or refused
 * @param parts the boxes of its bolts or clamps; empty likewise
 * @param overTable the box that must lie wholly over the table top; {@code null} for bolts
 */
record RefMount(
    RefSlots slots,
    String name,
    int index,
    boolean clamps,
    boolean blank,
    boolean refused,
    long thread,
    List<Stud> studs,
    List<RefPart> parts,
    Stud overTable) {

  /** The name of the mount of strap clamps. */
  static final String CLAMPS = "clamps";

  /** A rectangle in the vise frame. */
  record Stud(Span u, Span v) {}

  static RefMount bolts(
      Settings settings, RefSlots slots, Vise vise, Mount mount, int index, Set<Column> missing) {
    boolean blank = slotsBlank(slots, missing);
    List<Long> threads = new ArrayList<>();
    if (slots.width().isKnown()) {
      threads.addAll(RefSlots.threads(slots.width().length(), settings.smallerThreads()));
    }
    for (Bolt bolt : mount.bolts()) {
      blank |= ask(bolt.v(), Column.BOLT_SPACING, missing);
      blank |= ask(bolt.u(), Column.BOLT_U, missing);
      blank |= ask(bolt.holeU(), mount.own() ? Column.BOLT_HOLE_U : Column.HOLE_U, missing);
      blank |= ask(bolt.holeV(), mount.own() ? Column.BOLT_HOLE_V : Column.HOLE_V, missing);
      threads.removeIf(d -> tooSmall(bolt.holeU(), d) || tooSmall(bolt.holeV(), d));
    }
    boolean refused = slots.count() == 0 || slots.width().isKnown() && threads.isEmpty();
    List<Stud> studs = new ArrayList<>();
    List<RefPart> parts = new ArrayList<>();
    long d = blank || refused ? 0 : threads.get(0);
    if (!blank && !refused) {
      for (Bolt bolt : mount.bolts()) {
        long u = bolt.u().length();
        long v = bolt.v().length();
        long playU = (bolt.holeU().length() - d) / 2;
        long playV = (bolt.holeV().length() - d) / 2;
        studs.add(new Stud(new Span(u - playU, u + playU), new Span(v - playV, v + playV)));
        parts.add(RefVise.bolt(vise, bolt, d));
      }
    }
    return new RefMount(slots, mount.name(), index, false, blank, refused, d, studs, parts, null);
  }

  /**
   * The strap clamps.
   *
   * @param base {@code null} if a blank leaves it open
   */
  static RefMount clamps(
      Settings settings, RefSlots slots, RefPart base, int index, Set<Column> missing) {
    boolean blank = slotsBlank(slots, missing) || base == null;
    long d = slots.width().isKnown() ? RefSlots.thread(slots.width().length()) : 0;
    boolean tooShort = Math.min(slots.length(), settings.clampRoom()) < 2 * d;
    boolean refused = slots.count() == 0 || slots.width().isKnown() && (d == 0 || tooShort);
    if (blank || refused) {
      return new RefMount(
          slots, CLAMPS, index, true, blank, refused, 0, List.of(), List.of(), null);
    }
    Span u = new Span(base.loClosed(), base.hiClosed());
    long edge = base.v().hi();
    long end = edge + settings.clampRoom();
    List<Stud> studs = new ArrayList<>();
    List<RefPart> parts = new ArrayList<>();
    for (Span v : List.of(new Span(-end, -edge), new Span(edge, end))) {
      parts.add(RefVise.clamp(base, v));
      if (u.hi() - u.lo() >= 2 * d && v.hi() - v.lo() >= 2 * d) {
        studs.add(new Stud(new Span(u.lo() + d, u.hi() - d), new Span(v.lo() + d, v.hi() - d)));
      }
    }
    Stud all = new Stud(u, new Span(-end, end));
    return new RefMount(slots, CLAMPS, index, true, false, studs.isEmpty(), d, studs, parts, all);
  }

  private static boolean slotsBlank(RefSlots slots, Set<Column> missing) {
    if (slots.placesBlank()) {
      missing.add(Column.SLOT_PITCH);
    }
    return ask(slots.width(), Column.SLOT_WIDTH, missing) | slots.placesBlank();
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

  /**
   * Positions of the vise along and across the slots that one choice of slots leaves: any of {@code
   * along} with any of {@code across}.
   */
  private record Left(List<Span> along, List<Span> across) {}

  private Span along(Stud stud, Facing facing) {
    return slots.alongX() ? facing.x(stud.u, stud.v) : facing.y(stud.u, stud.v);
  }

  private Span across(Stud stud, Facing facing) {
    return slots.alongX() ? facing.y(stud.u, stud.v) : facing.x(stud.u, stud.v);
  }

  /** The positions at which an interval lies within ± {@code half}. */
  private static List<Span> within(long half, Span span) {
    return -half - span.lo() <= half - span.hi()
        ? List.of(new Span(-half - span.lo(), half - span.hi()))
        : List.of();
  }

  /** Where everything but the choice of slots allows it. */
  private Left unslotted(Facing facing) {
    List<Span> along = List.of(Span.ALL);
    List<Span> across = List.of(Span.ALL);
    if (overTable != null) {
      long tableX = slots.machine().tableLength() / 2;
      long tableY = slots.machine().tableWidth() / 2;
      along = within(slots.alongX() ? tableX : tableY, along(overTable, facing));
      across = within(slots.alongX() ? tableY : tableX, across(overTable, facing));
    }
    long end = slots.length() / 2 - thread;
    for (Stud stud : studs) {
      // Some point of the stud's room lies within ± end.
      Span room = along(stud, facing);
      along =
          -end - room.hi() <= end - room.lo()
              ? RefRegion.cut(along, new Span(-end - room.hi(), end - room.lo()))
              : List.of();
    }
    return new Left(along, across);
  }

  /** The positions across the slots at which that slot runs through that stud's room. */
  private Span through(Stud stud, int slot, Facing facing) {
    Span room = across(stud, facing);
    return new Span(slots.at(slot) - room.hi(), slots.at(slot) - room.lo());
  }

  /** For every choice of slots, one for each stud, what it leaves across the slots. */
  List<Span> choices(Orientation turn) {
    Facing facing = Facing.of(turn);
    List<Span> left = unslotted(facing).across;
    for (Stud stud : studs) {
      List<Span> next = new ArrayList<>();
      for (int j = 1; j <= slots.count(); j++) {
        next.addAll(RefRegion.cut(left, through(stud, j, facing)));
      }
      left = next.stream().distinct().toList();
    }
    return left;
  }

  private RefRegion region(Orientation turn, List<Span> along, List<Span> across) {
    List<Span> merged = RefRegion.merged(across);
    return slots.alongX()
        ? new RefRegion(turn, this, along, merged)
        : new RefRegion(turn, this, merged, along);
  }

  RefRegion nowhere(Orientation turn) {
    return new RefRegion(turn, this, List.of(), List.of());
  }

  /** Where this mount holds, ignoring all obstacles; for a mount with a blank: {@code anywhere}. */
  RefRegion holds(Orientation turn, Span anywhereX, Span anywhereY) {
    if (refused) {
      return nowhere(turn);
    }
    if (blank) {
      return new RefRegion(turn, this, List.of(anywhereX), List.of(anywhereY));
    }
    return region(turn, unslotted(Facing.of(turn)).along, choices(turn));
  }

  /** Where it can be moved by {@code tap} either way in the same slots, or stands in the middle. */
  RefRegion settable(Orientation turn, long tap) {
    return region(
        turn,
        unslotted(Facing.of(turn)).along.stream().map(span -> tappable(span, tap)).toList(),
        choices(turn).stream().map(span -> tappable(span, tap)).toList());
  }

  /** Both whole neighbours of a middle that is not whole count as the middle. */
  private static Span tappable(Span left, long tap) {
    return left.hi() - left.lo() >= 2 * tap
        ? new Span(left.lo() + tap, left.hi() - tap)
        : new Span(
            Math.floorDiv(left.lo() + left.hi(), 2), -Math.floorDiv(-left.lo() - left.hi(), 2));
  }

  /** The slot of each stud at (x, y): the nearest within reach, ties to the lowest number. */
  List<Integer> slotsAt(Orientation turn, long x, long y) {
    Facing facing = Facing.of(turn);
    long place = slots.alongX() ? y : x;
    List<Integer> nearest = new ArrayList<>();
    for (Stud stud : studs) {
      int best = 0;
      long leastOff = Long.MAX_VALUE;
      for (int j = 1; j <= slots.count(); j++) {
        Span through = through(stud, j, facing);
        long twiceOff = Math.abs(2 * place - through.lo() - through.hi());
        if (through.lo() <= place && place <= through.hi() && twiceOff < leastOff) {
          best = j;
          leastOff = twiceOff;
        }
      }
      nearest.add(best);
    }
    return nearest;
  }

  /** Where every stud stays within the slot chosen for it. */
  RefRegion holdsIn(Orientation turn, List<Integer> chosen) {
    Facing facing = Facing.of(turn);
    Left left = unslotted(facing);
    List<Span> across = left.across;
    for (int i = 0; i < chosen.size(); i++) {
      across = RefRegion.cut(across, through(studs.get(i), chosen.get(i), facing));
    }
    return region(turn, left.along, across);
  }
}
