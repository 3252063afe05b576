package org.jawroom.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.drawing.view.Ink;

/** The key to lines and hatchings. */
record Key(Graphics2D pen, double left, double top, double width, boolean open) {

  private record Entry(Ink ink, String words) {}

  private static final List<Entry> ENTRIES =
      List.of(
          new Entry(Ink.BODY, "vise"),
          new Entry(Ink.SWEPT, "swept by the jaws"),
          new Entry(Ink.HANDLE, "while loading"),
          new Entry(Ink.GUARD, "guard at its nearest"),
          new Entry(Ink.GUARD_SWEPT, "swept over the travel"),
          new Entry(Ink.GUARD_OVERHEAD, "passes over or under"));

  private static final Entry OPEN =
      new Entry(Ink.GUARD_OPEN, "a face stands in here; solid: at worst");

  static final double SIZE = 6.5;

  private static final double LINE = SIZE + 3;

  /** The height of the key. */
  static double height(boolean open) {
    return 4 + (ENTRIES.size() / 2 + (open ? 1 : 0)) * LINE;
  }

  void paint() {
    double column = width / 2;
    for (int i = 0; i < ENTRIES.size(); i++) {
      int line = i / 2;
      sample(ENTRIES.get(i), left + (i % 2) * column, top + 4 + line * LINE, column);
    }
    if (open) {
      sample(OPEN, left, top + height(false), width);
    }
  }

  private void sample(Entry entry, double x, double y, double column) {
    Rectangle2D sample = new Rectangle2D.Double(x, y, 13, SIZE);
    if (entry.ink.fill() != null) {
      pen.setColor(entry.ink.fill());
      pen.fill(sample);
    }
    if (entry.ink.hatch() != null) {
      entry.ink.hatch().draw(pen, sample);
    }
    pen.setColor(Color.BLACK);
    pen.setStroke(entry.ink.stroke());
    pen.draw(sample);
    Lettering.write(
        pen,
        Typeface.PLAIN,
        SIZE,
        Lettering.fitted(Typeface.PLAIN, SIZE, entry.words, column - 17),
        x + 16,
        y + SIZE - 0.8);
  }
}
