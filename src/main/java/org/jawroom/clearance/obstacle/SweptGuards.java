package org.jawroom.clearance.obstacle;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.ClearanceClass;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.machine.Side;

/**
 * The swept guards of a machine, laid out in flat arrays for fast evaluation with any vise and
 * turn. Guards that fill everything beyond a face at every height are merged, per side and per
 * {@link ClearanceClass} of part, into the nearest face (a wall); the others, and the table, stay
 * boxes.
 */
public final class SweptGuards {

  /** Longs per guard in {@link #rows}: its six limits, in the order of {@link SweptParts#rows}. */
  static final int ROW = 6;

  private static final Side[] SIDE = Side.values();
  private static final int SIDES = SIDE.length;

  private final List<SweptGuard> all;
  private final SweptGuard[] each;
  private final long handRoom;
  private final boolean tolerant;
  private final long[][] rows;
  private final Side[] sides;
  private final int[] boxes;
  private final boolean[] repeats;
  private final long[][] faces;

  private SweptGuards(
      List<SweptGuard> all, long handRoom, Side[] sides, int[] boxes, long[][] faces) {
    this.all = all;
    this.each = all.toArray(SweptGuard[]::new);
    this.handRoom = handRoom;
    this.tolerant = all.stream().anyMatch(guard -> guard.tolerance() != 0);
    this.rows = rows(all);
    this.sides = sides;
    this.boxes = boxes;
    this.repeats = repeats(all, boxes);
    this.faces = faces;
  }

  /**
   * Classifies the swept guards as walls or boxes.
   *
   * @param guards in order of rank
   * @param handRoom least clearance of a handle while loading
   */
  public static SweptGuards of(List<SweptGuard> guards, long handRoom) {
    Side[] sides = new Side[guards.size()];
    int[] boxes = new int[guards.size()];
    int count = 0;
    long[][] faces = {noFaces(), noFaces()};
    for (int i = 0; i < boxes.length; i++) {
      SweptGuard guard = guards.get(i);
      Side side = guard.table() ? null : sideFilled(guard.box());
      sides[i] = side;
      if (side == null) {
        boxes[count++] = i;
        continue;
      }
      for (ClearanceClass kind : SweptParts.CLASSES) {
        if (kind.situation() == guard.situation()) {
          long required = kind.required(guard, handRoom);
          merge(faces[0], kind, side, face(guard.box(), side), required);
          merge(faces[1], kind, side, face(guard.box(), side), required + guard.tolerance());
        }
      }
    }
    return new SweptGuards(
        List.copyOf(guards), handRoom, sides, Arrays.copyOf(boxes, count), faces);
  }

  /** Every guard, in order of rank. */
  public List<SweptGuard> all() {
    return all;
  }

  int count() {
    return each.length;
  }

  /** The guard with that index in {@link #all}. */
  SweptGuard guard(int index) {
    return each[index];
  }

  /** The least gap between a box and any guard of a situation; empty if that has none. */
  public OptionalLong leastGap(Box box, Situation situation) {
    // The axes of a vise with its handle to the right are those of the table.
    long[] sweeps = rows(Orientation.RIGHT);
    long least = Long.MAX_VALUE;
    for (int i = 0; i < each.length; i++) {
      if (each[i].situation() == situation) {
        int at = i * ROW;
        long alongX = gap(box.x(), sweeps, at + SweptParts.U_LO);
        long alongY = gap(box.y(), sweeps, at + SweptParts.V_LO);
        long alongZ = gap(box.z(), sweeps, at + SweptParts.W_LO);
        least = Math.min(least, Math.max(alongZ, Math.max(alongX, alongY)));
      }
    }
    return least == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(least);
  }

  private static long gap(Interval part, long[] sweeps, int lo) {
    return Math.max(sweeps[lo] - part.hi(), part.lo() - sweeps[lo + 1]);
  }

  public long handRoom() {
    return handRoom;
  }

  /** Whether any guard has a tolerance above 0. */
  public boolean hasTolerance() {
    return tolerant;
  }

  /** The clearance that a guard requires of parts of a class. */
  long required(ClearanceClass kind, SweptGuard guard) {
    return kind.required(guard, handRoom);
  }

  /** The sweep of each guard, {@link #ROW} longs each, in the axes of a vise in that turn. */
  long[] rows(Orientation turn) {
    return rows[turn.ordinal()];
  }

  /** The side on which a guard fills everything beyond a face; null if it is a box. */
  Side side(int guard) {
    return sides[guard];
  }

  /** How many guards are boxes rather than walls. */
  public int boxCount() {
    return boxes.length;
  }

  /** Indices of the boxes in {@link #all}; callers must not modify the array. */
  int[] boxes() {
    return boxes;
  }

  /** Whether a box while loading equals its predecessor, the same box while cutting. */
  boolean repeats(int box) {
    return repeats[box];
  }

  /**
   * The limit for parts of each class on each side, in the order of {@link PartReach#ends}: the
   * nearest face less the required clearance. {@link Length#ENDLESS} or its negative if there is
   * none. Must not be modified.
   */
  long[] faces(boolean withTolerance) {
    return faces[withTolerance ? 1 : 0];
  }

  /** One of {@link #faces}. */
  long face(ClearanceClass kind, Side side, boolean withTolerance) {
    return faces[withTolerance ? 1 : 0][kind.ordinal() * SIDES + side.ordinal()];
  }

  private static long[][] rows(List<SweptGuard> all) {
    long[][] rows = new long[Orientation.ALL.size()][ROW * all.size()];
    for (Orientation turn : Orientation.ALL) {
      long[] row = rows[turn.ordinal()];
      for (int i = 0; i < all.size(); i++) {
        Box box = all.get(i).box();
        Interval u = turn.u(box.x(), box.y());
        Interval v = turn.v(box.x(), box.y());
        int at = i * ROW;
        row[at + SweptParts.U_LO] = u.lo();
        row[at + SweptParts.U_HI] = u.hi();
        row[at + SweptParts.V_LO] = v.lo();
        row[at + SweptParts.V_HI] = v.hi();
        row[at + SweptParts.W_LO] = box.z().lo();
        row[at + SweptParts.W_HI] = box.z().hi();
      }
    }
    return rows;
  }

  private static boolean[] repeats(List<SweptGuard> all, int[] boxes) {
    boolean[] repeats = new boolean[boxes.length];
    for (int i = 1; i < boxes.length; i++) {
      SweptGuard before = all.get(boxes[i - 1]);
      SweptGuard box = all.get(boxes[i]);
      repeats[i] =
          before.situation() == Situation.CUTTING
              && box.situation() == Situation.LOADING
              && before.table() == box.table()
              && before.clearance() == box.clearance()
              && before.tolerance() == box.tolerance()
              && before.box().equals(box.box());
    }
    return repeats;
  }

  private static void merge(long[] faces, ClearanceClass kind, Side side, long face, long need) {
    int at = kind.ordinal() * SIDES + side.ordinal();
    faces[at] =
        switch (side) {
          case FRONT, LEFT -> Math.max(faces[at], face + need);
          case REAR, RIGHT -> Math.min(faces[at], face - need);
        };
  }

  private static long[] noFaces() {
    long[] faces = new long[SweptParts.CLASSES.length * SIDES];
    for (int i = 0; i < faces.length; i++) {
      Side side = SIDE[i % SIDES];
      faces[i] =
          switch (side) {
            case FRONT, LEFT -> -Length.ENDLESS;
            case REAR, RIGHT -> Length.ENDLESS;
          };
    }
    return faces;
  }

  /**
   * The side on which a box fills everything beyond a face at every height; null if there is none.
   */
  private static Side sideFilled(Box box) {
    if (Length.isBounded(box.z().lo()) || Length.isBounded(box.z().hi())) {
      return null;
    }
    if (isEndless(box.x())) {
      return sideFilled(box.y(), Side.FRONT, Side.REAR);
    }
    return isEndless(box.y()) ? sideFilled(box.x(), Side.LEFT, Side.RIGHT) : null;
  }

  private static Side sideFilled(Interval across, Side low, Side high) {
    if (Length.isBounded(across.lo()) == Length.isBounded(across.hi())) {
      return null;
    }
    return Length.isBounded(across.hi()) ? low : high;
  }

  private static boolean isEndless(Interval interval) {
    return !Length.isBounded(interval.lo()) && !Length.isBounded(interval.hi());
  }

  private static long face(Box box, Side side) {
    return switch (side) {
      case FRONT -> box.along(Axis.Y).hi();
      case REAR -> box.along(Axis.Y).lo();
      case LEFT -> box.along(Axis.X).hi();
      case RIGHT -> box.along(Axis.X).lo();
    };
  }
}
