package org.jawroom.tables.template.sketch;

import static org.jawroom.tables.template.sketch.SketchPen.ACCENT;
import static org.jawroom.tables.template.sketch.SketchPen.CASTING;
import static org.jawroom.tables.template.sketch.SketchPen.INK;
import static org.jawroom.tables.template.sketch.SketchPen.MEASURE;
import static org.jawroom.tables.template.sketch.SketchPen.MOVING;
import static org.jawroom.tables.template.sketch.SketchPen.STEEL;

import java.awt.Color;
import java.util.Set;

/** A vise with one moving jaw, from the side and from above, each dimension named by its column. */
public final class ViseSketch {
  public static final int WIDTH = 900;
  public static final int SIDE_HEIGHT = 500;
  public static final int PLAN_HEIGHT = 490;

  private ViseSketch() {}

  /** From the side: the fixed jaw on the left, the handle on the right. */
  public static byte[] side(Set<String> marked) {
    SketchPen pen = new SketchPen(WIDTH, SIDE_HEIGHT, 1.3, -291, -125, marked);
    pen.title("A vise from the side");
    pen.wall(-250, 360, -14, 0);
    pen.note(-205, -26, INK, "machine table");
    pen.body(STEEL, -115, 300, 31, 59);
    pen.body(CASTING, -70, 260, 0, 75);
    pen.body(CASTING, -30, 0, 75, 120);
    pen.body(MOVING, 105, 165, 75, 120);
    pen.body(STEEL, 300, 316, 33, 57);
    pen.body(STEEL, 302, 314, 45, 170);
    pen.body(MOVING, 302, 340, 158, 178);
    pen.axis(-145, 45, -70, 45);
    pen.axis(260, 45, 355, 45);
    pen.ghost(85, 105, 0, 22);
    pen.axis(95, -10, 95, 40);
    alongTheBase(pen);
    alongTheTop(pen);
    heights(pen);
    return pen.png();
  }

  private static void alongTheBase(SketchPen pen) {
    pen.extension(0, -80, 0, 0);
    pen.extension(-70, -104, -70, 0);
    pen.extension(260, -104, 260, 0);
    pen.extension(95, -50, 95, 0);
    pen.extension(-115, 31, -115, -50);
    pen.extension(300, 33, 300, -50);
    pen.across(MEASURE, 0, 95, -44, "bolt_u");
    pen.across(MEASURE, -70, 0, -72, "rear_reach");
    pen.across(MEASURE, 0, 260, -72, "front_reach");
    pen.across(MEASURE, -70, 260, -100, "base_length");
    pen.acrossBeside(ACCENT, -115, -70, -44, false, "rear_projection");
    pen.acrossBeside(ACCENT, 260, 300, -44, true, "front_projection");
  }

  private static void alongTheTop(SketchPen pen) {
    pen.extension(-30, 120, -30, 145);
    pen.extension(0, 120, 0, 145);
    pen.extension(105, 120, 105, 145);
    pen.extension(165, 120, 165, 145);
    pen.across(MEASURE, -30, 0, 144, "fixed_jaw_thickness");
    pen.across(MEASURE, 0, 105, 95, "opening");
    pen.across(MEASURE, 105, 165, 144, "moving_jaw_thickness");
    pen.extension(300, 57, 300, 194);
    pen.extension(340, 178, 340, 194);
    pen.across(ACCENT, 300, 340, 193, "handle_depth");
  }

  private static void heights(SketchPen pen) {
    pen.extension(-30, 120, -224, 120);
    pen.extension(-70, 75, -224, 75);
    pen.upright(MEASURE, -216, 0, 75, false, "bed_height");
    pen.upright(MEASURE, -216, 75, 120, false, "jaw_height");
    pen.upright(MEASURE, -136, 0, 45, false, "screw_height");
    pen.extension(270, 178, 302, 178);
    pen.upright(ACCENT, 280, 45, 178, false, "handle_radius");
  }

  /** From above: the handle on the right. */
  public static byte[] plan(Set<String> marked) {
    SketchPen pen = new SketchPen(WIDTH, PLAN_HEIGHT, 1.3, -291, -180, marked);
    pen.title("The same vise from above");
    pen.body(STEEL, -115, 300, -14, 14);
    pen.body(CASTING, -70, 260, -105, 105);
    pen.body(CASTING, -30, 0, -80, 80);
    pen.body(MOVING, 105, 165, -80, 80);
    pen.body(STEEL, 300, 316, -12, 12);
    pen.body(STEEL, 302, 314, 0, 125);
    pen.body(MOVING, 302, 340, 113, 133);
    pen.axis(-145, 0, -70, 0);
    pen.axis(260, 0, 355, 0);
    for (int sign : new int[] {-1, 1}) {
      pen.body(Color.WHITE, 75, 115, sign * 91 - 9, sign * 91 + 9);
      pen.axis(65, sign * 91, 195, sign * 91);
      pen.axis(95, sign * 91 - 22, 95, sign * 91 + 22);
    }
    bolts(pen);
    pen.extension(-70, 105, -150, 105);
    pen.extension(-70, -105, -150, -105);
    pen.upright(MEASURE, -142, -105, 105, false, "base_width");
    pen.extension(0, 80, 24, 80);
    pen.extension(0, -80, 24, -80);
    pen.upright(MEASURE, 16, -80, 80, true, "jaw_width");
    pen.leader(298, -60, 285, -14, true, "screw_diameter");
    pen.footnote(
        1, "Orange: turns or slides. Take each projection twice, jaws CLOSED and jaws fully OPEN.");
    pen.footnote(
        0,
        "jaws = both (self-centring): reaches and bolt_u count from the middle between the jaw faces.");
    return pen.png();
  }

  private static void bolts(SketchPen pen) {
    pen.upright(MEASURE, 184, -91, 91, true, "bolt_spacing");
    pen.extension(75, 100, 75, 135);
    pen.extension(115, 100, 115, 135);
    pen.acrossBeside(MEASURE, 75, 115, 128, true, "bolt_hole_u");
    pen.extension(75, -82, 48, -82);
    pen.extension(75, -100, 48, -100);
    pen.upright(MEASURE, 54, -100, -82, false, "bolt_hole_v");
  }
}
