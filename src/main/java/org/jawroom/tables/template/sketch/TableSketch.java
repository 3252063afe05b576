package org.jawroom.tables.template.sketch;

import static org.jawroom.tables.template.sketch.SketchPen.ACCENT;
import static org.jawroom.tables.template.sketch.SketchPen.CASTING;
import static org.jawroom.tables.template.sketch.SketchPen.FAINT;
import static org.jawroom.tables.template.sketch.SketchPen.INK;
import static org.jawroom.tables.template.sketch.SketchPen.MEASURE;

import java.awt.Color;
import java.util.Set;

/** A table from above, its slots, and the range of the spindle over it. */
public final class TableSketch {
  public static final int WIDTH = 900;
  public static final int HEIGHT = 430;

  private TableSketch() {}

  public static byte[] plan(Set<String> marked) {
    SketchPen pen = new SketchPen(WIDTH, HEIGHT, 0.62, -720, -370, marked);
    pen.title("The table from above, you in front of it");
    pen.body(CASTING, -450, 450, -200, 200);
    for (int slot = -1; slot <= 1; slot++) {
      pen.body(Color.WHITE, -450, 450, slot * 110 - 12, slot * 110 + 12);
      pen.note(-410, slot * 110 - 2, INK, "slot " + (slot + 2));
    }
    reach(pen);
    pen.extension(-450, -200, -450, -290);
    pen.extension(450, -200, 450, -290);
    pen.across(MEASURE, -450, 450, -280, "table_length");
    pen.extension(450, 200, 540, 200);
    pen.extension(450, -200, 540, -200);
    pen.upright(MEASURE, 525, -200, 200, true, "table_width");
    slots(pen);
    pen.note(0, -225, INK, "front: you stand here");
    pen.footnote(
        0,
        "spindle_x, spindle_y: how far the spindle stands to the right of the table's middle, and behind it,"
            + " at mid-travel.");
    return pen.png();
  }

  private static void reach(SketchPen pen) {
    pen.ghost(-300, 300, -110, 190);
    pen.note(-90, 66, FAINT, "where the spindle can stand");
    pen.round(ACCENT, 0, 40, 5);
    pen.leader(-50, -55, 0, 40, false, "the spindle at mid-travel");
    pen.across(ACCENT, -300, 300, 152, "travel_x");
    pen.upright(ACCENT, 280, -110, 190, false, "travel_y");
  }

  private static void slots(SketchPen pen) {
    pen.extension(-450, 0, -500, 0);
    pen.extension(-450, -110, -560, -110);
    pen.extension(-450, -200, -560, -200);
    pen.upright(MEASURE, -490, -110, 0, false, "slot_pitch");
    pen.upright(MEASURE, -545, -200, -110, false, "slot_first");
    pen.extension(-450, 122, -500, 122);
    pen.extension(-450, 98, -500, 98);
    pen.upright(MEASURE, -490, 98, 122, false, "slot_width");
  }
}
