package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Side;

/**
 * What the guards of a machine sweep, sorted for quick reckoning: those that fill everything beyond
 * a face, at every height, are merged into the nearest such face on each side for each {@link Kind}
 * of part; the others, and the table, stay boxes.
 */
public final class SweptGuards {
  private static final Side[] SIDE = Side.values();
  private static final int SIDES = SIDE.length;

  private final List<SweptGuard> all;
  private final long handRoom;
  private final boolean tolerant;
  private final SweptGuard[] boxes;
  private final boolean[] repeats;
  private final long[][] faces;

  private SweptGuards(List<SweptGuard> all, long handRoom, SweptGuard[] boxes, long[][] faces) {
    this.all = all;
    this.handRoom = handRoom;
    this.tolerant = all.stream().anyMatch(guard -> guard.tolerance() != 0);
    this.boxes = boxes;
    this.repeats = repeats(boxes);
    this.faces = faces;
  }

  /**
   * Sorts what guards sweep.
   *
   * @param guards in the order of rank
   * @param handRoom the least clearance of a handle while loading
   */
  public static SweptGuards of(List<SweptGuard> guards, long handRoom) {
    List<SweptGuard> boxes = new ArrayList<>();
    long[][] faces = {noFaces(), noFaces()};
    for (SweptGuard guard : guards) {
      Side side = guard.table() ? null : sideFilled(guard.box());
      if (side == null) {
        boxes.add(guard);
        continue;
      }
      for (Kind kind : Kind.ALL) {
        if (kind.situation() == guard.situation()) {
          long required = kind.required(guard, handRoom);
          merge(faces[0], kind, side, face(guard.box(), side), required);
          merge(faces[1], kind, side, face(guard.box(), side), required + guard.tolerance());
        }
      }
    }
    return new SweptGuards(List.copyOf(guards), handRoom, boxes.toArray(SweptGuard[]::new), faces);
  }

  /** Every guard, in the order of rank. */
  public List<SweptGuard> all() {
    return all;
  }

  public long handRoom() {
    return handRoom;
  }

  /** Whether any of them may be off. */
  public boolean hasTolerance() {
    return tolerant;
  }

  /** The clearance that a guard asks of parts of a kind. */
  long required(Kind kind, SweptGuard guard) {
    return kind.required(guard, handRoom);
  }

  SweptGuard[] boxes() {
    return boxes;
  }

  /** Whether a box while loading is as the one before it is while cutting. */
  boolean repeats(int box) {
    return repeats[box];
  }

  /**
   * How far parts of a kind may reach on a side: the nearest face less what is required of it.
   * Endless where there is none.
   */
  long face(Kind kind, Side side, boolean withTolerance) {
    return faces[withTolerance ? 1 : 0][kind.ordinal() * SIDES + side.ordinal()];
  }

  private static boolean[] repeats(SweptGuard[] boxes) {
    boolean[] repeats = new boolean[boxes.length];
    for (int i = 1; i < boxes.length; i++) {
      SweptGuard before = boxes[i - 1];
      SweptGuard box = boxes[i];
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

  private static void merge(long[] faces, Kind kind, Side side, long face, long need) {
    int at = kind.ordinal() * SIDES + side.ordinal();
    faces[at] =
        switch (side) {
          case FRONT, LEFT -> Math.max(faces[at], face + need);
          case REAR, RIGHT -> Math.min(faces[at], face - need);
        };
  }

  private static long[] noFaces() {
    long[] faces = new long[Kind.ALL.size() * SIDES];
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
   * The side on which a box fills everything beyond a face, at every height; null if it does not.
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
