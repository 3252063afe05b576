package org.jawroom.tables.template.sketch;

import static org.jawroom.tables.template.sketch.SketchPen.ACCENT;
import static org.jawroom.tables.template.sketch.SketchPen.CASTING;
import static org.jawroom.tables.template.sketch.SketchPen.INK;
import static org.jawroom.tables.template.sketch.SketchPen.MEASURE;
import static org.jawroom.tables.template.sketch.SketchPen.MOVING;
import static org.jawroom.tables.template.sketch.SketchPen.STEEL;

import java.util.Set;

/** A mill from its right side: the heights, the ledges, and the heights at which gaps are taped. */
public final class MillSketch {
  public static final int WIDTH = 900;
  public static final int HEIGHT = 590;

  private MillSketch() {}

  public static byte[] side(Set<String> marked) {
    SketchPen pen = new SketchPen(WIDTH, HEIGHT, 0.6, -790, -330, marked);
    pen.title("A mill from its right side: front on the left, column on the right");
    machine(pen);
    vise(pen);
    measures(pen);
    return pen.png();
  }

  private static void machine(SketchPen pen) {
    pen.wall(-540, -520, -240, 520);
    pen.note(-580, 440, INK, "door");
    pen.wall(-520, -440, -240, -110);
    pen.note(-570, -180, INK, "sill");
    pen.body(CASTING, -170, 360, -240, -160);
    pen.body(CASTING, -120, 240, -160, -60);
    pen.body(CASTING, -200, 200, -60, 0);
    pen.body(STEEL, -228, -200, -52, -22);
    pen.body(STEEL, 200, 224, -52, -22);
    pen.body(CASTING, 400, 560, -240, 590);
    pen.note(480, 100, INK, "column");
    pen.wall(384, 400, -160, 250);
    pen.body(MOVING, -90, 400, 430, 540);
    pen.note(150, 485, INK, "head");
    pen.body(STEEL, -34, 34, 400, 430);
    pen.ghost(-90, 340, 290, 400);
    pen.ghost(-34, 34, 260, 290);
    pen.axis(0, 580, 0, 180);
  }

  private static void vise(SketchPen pen) {
    pen.body(CASTING, -150, 80, 0, 45);
    pen.body(CASTING, 50, 80, 45, 85);
    pen.body(MOVING, -70, -30, 45, 85);
    pen.body(STEEL, -30, 50, 60, 150);
    pen.note(10, 108, INK, "work");
    pen.body(STEEL, -180, -150, 20, 36);
    pen.body(STEEL, -178, -170, -80, 28);
    pen.body(MOVING, -200, -170, -92, -76);
  }

  private static void measures(SketchPen pen) {
    pen.extension(34, 260, 105, 260);
    pen.upright(MEASURE, 95, 0, 260, true, "nose_min");
    pen.extension(34, 400, 257, 400);
    pen.upright(MEASURE, 245, 0, 400, true, "nose_max");
    pen.extension(200, 0, 257, 0);
    pen.extension(-200, 0, -200, -140);
    pen.extension(-228, -22, -228, -140);
    pen.acrossBeside(MEASURE, -228, -200, -132, false, "front_ledge");
    pen.extension(200, -22, 200, -140);
    pen.extension(224, -22, 224, -140);
    pen.acrossBeside(MEASURE, 200, 224, -132, true, "rear_ledge");
    pen.extension(-30, 150, -330, 150);
    pen.extension(-200, -92, -330, -92);
    pen.upright(ACCENT, -320, -92, 150, false, "tape gaps here");
    pen.footnote(
        1,
        "Tape each gap to the nearest thing at any height between the lowest point of a handle and the top"
            + " of the tallest work.");
    pen.footnote(
        0,
        "What stands nearer only above or below that, as a sill, a hose arm or the head, gets a row of its"
            + " own in guards.");
  }
}
