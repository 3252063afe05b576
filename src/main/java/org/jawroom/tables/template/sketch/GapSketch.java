package org.jawroom.tables.template.sketch;

import static org.jawroom.tables.template.sketch.SketchPen.ACCENT;
import static org.jawroom.tables.template.sketch.SketchPen.CASTING;
import static org.jawroom.tables.template.sketch.SketchPen.FAINT;
import static org.jawroom.tables.template.sketch.SketchPen.INK;

import java.util.Set;

/** The four gaps, each with the table at the end of its travel where the gap is taped. */
public final class GapSketch {
  public static final int WIDTH = 900;
  public static final int HEIGHT = 590;

  private static final double ROOM_X = 180;
  private static final double ROOM_Y = 88;
  private static final double TABLE_X = 95;
  private static final double TABLE_Y = 28;
  private static final double TRAVEL_X = 52;
  private static final double TRAVEL_Y = 32;
  private static final double WALL = 12;

  private final SketchPen pen;

  private GapSketch(Set<String> marked) {
    pen = new SketchPen(WIDTH, HEIGHT, 1, 0, 0, marked);
  }

  public static byte[] plan(Set<String> marked) {
    GapSketch sketch = new GapSketch(marked);
    sketch.pen.title("The four gaps, seen from above: run the table to the end, then tape");
    sketch.front(225, 412);
    sketch.rear(675, 412);
    sketch.left(225, 148);
    sketch.right(675, 148);
    sketch.pen.footnote(
        0,
        "Dashed: the table at mid-travel. The dot: the spindle. Overrun when homing counts as travel.");
    return sketch.pen.png();
  }

  private void front(double x, double y) {
    panel(x, y, "front_gap: table fully FORWARD, door shut", 0, -TRAVEL_Y);
    pen.upright(ACCENT, x, y - ROOM_Y, y - TRAVEL_Y - TABLE_Y, true, "front_gap");
  }

  private void rear(double x, double y) {
    panel(x, y, "rear_gap: table fully BACK", 0, TRAVEL_Y);
    pen.upright(ACCENT, x, y + TRAVEL_Y + TABLE_Y, y + ROOM_Y, true, "rear_gap");
  }

  private void left(double x, double y) {
    panel(x, y, "left_gap: table fully LEFT", -TRAVEL_X, 0);
    pen.acrossBeside(ACCENT, x - ROOM_X, x - TRAVEL_X - TABLE_X, y, true, "left_gap");
  }

  private void right(double x, double y) {
    panel(x, y, "right_gap: table fully RIGHT", TRAVEL_X, 0);
    pen.acrossBeside(ACCENT, x + TRAVEL_X + TABLE_X, x + ROOM_X, y, false, "right_gap");
  }

  private void panel(double x, double y, String heading, double dx, double dy) {
    pen.heading(x - ROOM_X - WALL, y + ROOM_Y + WALL + 8, heading);
    pen.wall(x - ROOM_X - WALL, x + ROOM_X + WALL, y + ROOM_Y, y + ROOM_Y + WALL);
    pen.wall(x - ROOM_X - WALL, x + ROOM_X + WALL, y - ROOM_Y - WALL, y - ROOM_Y);
    pen.wall(x - ROOM_X - WALL, x - ROOM_X, y - ROOM_Y, y + ROOM_Y);
    pen.wall(x + ROOM_X, x + ROOM_X + WALL, y - ROOM_Y, y + ROOM_Y);
    pen.note(x + ROOM_X - 48, y - ROOM_Y + 12, INK, "door");
    pen.note(x + ROOM_X - 48, y + ROOM_Y - 14, INK, "rear cover");
    pen.body(CASTING, x + dx - TABLE_X, x + dx + TABLE_X, y + dy - TABLE_Y, y + dy + TABLE_Y);
    for (int slot = -1; slot <= 1; slot++) {
      pen.extension(x + dx - TABLE_X, y + dy + slot * 14, x + dx + TABLE_X, y + dy + slot * 14);
    }
    pen.ghost(x - TABLE_X, x + TABLE_X, y - TABLE_Y, y + TABLE_Y);
    pen.round(FAINT, x, y, 4);
  }
}
