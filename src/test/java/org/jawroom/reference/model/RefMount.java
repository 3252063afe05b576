package org.jawroom.reference.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Span;
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
 * @param level what open readings are taken as
 * @param blank whether it needs a blank column, at best
 * @param refused whether known holes, slots or sizes already rule it out
 * @param thread of its studs, half-nanometres; 0 if unknown or refused
 * @param studs where the axis of each bolt or clamp stud may stand in the vise frame; empty if the
 *     mount is blank or refused
 * @param parts the boxes of its bolts or clamps; empty likewise
 * @param overTable the box that must lie wholly over the table top; {@code null} for bolts
 */
public record RefMount(
    RefSlots slots,
    RefLevel level,
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
  public static final String CLAMPS = "clamps";

  /** A rectangle in the vise frame. */
  record Stud(Span u, Span v) {}

  static RefMount bolts(
      Settings settings,
      RefLevel level,
      RefSlots slots,
      Vise vise,
      Mount mount,
      int index,
      Set<Column> missing) {
    boolean blank = slotsBlank(slots, missing);
    List<Long> allowed = new ArrayList<>();
    if (slots.width().isKnown()) {
      allowed.addAll(RefSlots.threads(slots.width().length(), settings.smallerThreads()));
    }
    List<Long> all = new ArrayList<>(allowed);
    List<Long> most = new ArrayList<>(allowed);
    List<List<Span>> holes = new ArrayList<>();
    for (Bolt bolt : mount.bolts()) {
      blank |= ask(bolt.v(), Column.BOLT_SPACING, missing);
      blank |= ask(bolt.u(), Column.BOLT_U, missing);
      blank |= ask(bolt.holeU(), mount.own() ? Column.BOLT_HOLE_U : Column.HOLE_U, missing);
      blank |= ask(bolt.holeV(), mount.own() ? Column.BOLT_HOLE_V : Column.HOLE_V, missing);
      Span holeU = RefLevel.values(bolt.holeU(), 0);
      Span holeV = RefLevel.values(bolt.holeV(), 0);
      all.removeIf(d -> Math.min(holeU.lo(), holeV.lo()) < d);
      most.removeIf(d -> Math.min(holeU.hi(), holeV.hi()) < d);
      holes.add(List.of(RefLevel.signed(bolt.u()), RefLevel.signed(bolt.v()), holeU, holeV));
    }
    boolean worst = level == RefLevel.WORST;
    List<Long> threads = worst ? all : most;
    boolean needsBlank = blank && !worst;
    boolean refused = slots.count() == 0 || (worst || slots.width().isKnown()) && threads.isEmpty();
    List<Stud> studs = new ArrayList<>();
    List<RefPart> parts = new ArrayList<>();
    long d = needsBlank || refused ? 0 : threads.get(0);
    if (!needsBlank && !refused) {
      // Holes too small at worst pass none: some value then takes the smallest thread there is.
      long box = all.isEmpty() ? allowed.get(allowed.size() - 1) : Math.min(d, all.get(0));
      for (List<Span> hole : holes) {
        studs.add(
            new Stud(
                level.room(hole.get(0), play(level, hole.get(2), d)),
                level.room(hole.get(1), play(level, hole.get(3), d))));
        parts.add(RefVise.bolt(vise, level, hole, box));
      }
    }
    return new RefMount(
        slots, level, mount.name(), index, false, needsBlank, refused, d, studs, parts, null);
  }

  private static long play(RefLevel level, Span hole, long d) {
    return ((level == RefLevel.WORST ? hole.lo() : hole.hi()) - d) / 2;
  }

  /** The strap clamps. */
  static RefMount clamps(
      Settings settings,
      RefLevel level,
      RefSlots slots,
      Vise vise,
      int index,
      Set<Column> missing) {
    boolean worst = level == RefLevel.WORST;
    boolean blank = slotsBlank(slots, missing);
    blank |= ask(vise.base().width(), Column.BASE_WIDTH, missing);
    blank |= ask(vise.base().rearReach(), Column.REAR_REACH, missing);
    blank |= ask(vise.base().frontReach(), Column.FRONT_REACH, missing);
    boolean needsBlank = blank && !worst;
    long d = slots.width().isKnown() ? RefSlots.thread(slots.width().length()) : 0;
    boolean tooShort = Math.min(slots.length(), settings.clampRoom()) < 2 * d;
    boolean refused =
        slots.count() == 0 || (worst || slots.width().isKnown()) && (d == 0 || tooShort);
    if (needsBlank || refused) {
      return new RefMount(
          slots, level, CLAMPS, index, true, needsBlank, refused, 0, List.of(), List.of(), null);
    }
    Span low = RefLevel.values(vise.base().rearReach(), 0).negated();
    Span high = RefLevel.values(vise.base().frontReach(), 0);
    Span edge = RefLevel.values(vise.base().width(), 0).halves(1);
    Span end = edge.plus(new Span(settings.clampRoom(), settings.clampRoom()));
    Span u = level.box(low, high);
    // A strap lies on the base: on all of it for each value at worst, for some value at best.
    Span held = level.inside(low, high, d);
    long longest = worst ? high.lo() - low.hi() : high.hi() - low.lo();
    List<Stud> studs = new ArrayList<>();
    List<RefPart> parts = new ArrayList<>();
    for (boolean mirrored : List.of(true, false)) {
      Span near = mirrored ? end.negated() : edge;
      Span far = mirrored ? edge.negated() : end;
      parts.add(RefVise.clamp(vise, u, level.box(near, far)));
      if (longest >= 2 * d && settings.clampRoom() >= 2 * d) {
        studs.add(new Stud(held, level.inside(near, far, d)));
      }
    }
    Stud over = new Stud(u, level.box(end.negated(), end));
    return new RefMount(
        slots, level, CLAMPS, index, true, false, studs.isEmpty(), d, studs, parts, over);
  }

  private static boolean slotsBlank(RefSlots slots, Set<Column> missing) {
    if (slots.placesOpen()) {
      missing.add(Column.SLOT_PITCH);
    }
    return ask(slots.width(), Column.SLOT_WIDTH, missing) | slots.placesBlank();
  }

  private static boolean ask(Dimension dimension, Column column, Set<Column> missing) {
    if (dimension.isOpen()) {
      missing.add(column);
    }
    return dimension.isBlank();
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
    Span line = slots.at(slot);
    return level == RefLevel.WORST
        ? new Span(line.hi() - room.hi(), line.lo() - room.lo())
        : new Span(line.lo() - room.hi(), line.hi() - room.lo());
  }

  /** For every choice of slots, one for each stud, what it leaves across the slots. */
  public List<Span> choices(Orientation turn) {
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

  public RefRegion nowhere(Orientation turn) {
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
  public List<Integer> slotsAt(Orientation turn, long x, long y) {
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
  public RefRegion holdsIn(Orientation turn, List<Integer> chosen) {
    Facing facing = Facing.of(turn);
    Left left = unslotted(facing);
    List<Span> across = left.across;
    for (int i = 0; i < chosen.size(); i++) {
      across = RefRegion.cut(across, through(studs.get(i), chosen.get(i), facing));
    }
    return region(turn, left.along, across);
  }
}
