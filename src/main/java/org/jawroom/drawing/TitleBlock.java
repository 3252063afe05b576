package org.jawroom.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.drawing.view.Caption;

/** The text beside the views: names, verdict, clearances, scale, key to the lines, the caution. */
final class TitleBlock {
  private static final BasicStroke THIN = new BasicStroke(0.6f);
  private static final int MAX_TITLE_LINES = 3;

  /** The sizes of the lines, the first that goes; a place must not lose one of its measures. */
  private static final double[] SIZES = {Lettering.PLAIN, Key.SIZE, 5.5, 4.75, 4};

  private static final String MORE = "… more than goes here: jawroom explain has all of it";

  private final Graphics2D pen;
  private final Rectangle2D frame;
  private final double scale;
  private final boolean open;
  private double y;

  /**
   * @param open whether the key explains the bands of open faces
   */
  TitleBlock(Graphics2D pen, Rectangle2D frame, double scale, boolean open) {
    this.pen = pen;
    this.frame = frame;
    this.scale = scale;
    this.open = open;
    this.y = frame.getMinY() + 2;
  }

  void paint(Caption caption) {
    pen.setStroke(THIN);
    pen.setColor(Color.BLACK);
    pen.draw(frame);
    title(caption.title());
    rule();
    double bottom = frame.getMaxY() - captionHeight(caption) - 13.5 - Key.height(open);
    lines(caption.lines(), bottom);
    y = bottom;
    rule();
    new Key(pen, frame.getMinX() + 4, y, frame.getWidth() - 8, open).paint();
    y = frame.getMaxY() - captionHeight(caption) - 17;
    new ScaleBar(caption.unit(), caption.unitLength(), scale)
        .paint(pen, frame.getMinX() + 5, y + 12, Math.min(130, frame.getWidth() - 50));
    y += 15;
    rule();
    write(Typeface.BOLD, Lettering.SMALL, lines(Typeface.BOLD, Lettering.SMALL, caption.caution()));
  }

  private void lines(List<String> all, double bottom) {
    double size = SIZES[0];
    for (int i = 1; i < SIZES.length && !goes(all, size, bottom); i++) {
      size = SIZES[i];
    }
    boolean whole = goes(all, size, bottom);
    double room = whole ? bottom : bottom - (size + 1.5);
    for (String line : all) {
      List<String> wrapped = lines(Typeface.PLAIN, size, line);
      if (y + wrapped.size() * (size + 1.5) > room) {
        break;
      }
      write(Typeface.PLAIN, size, wrapped);
    }
    if (!whole) {
      write(Typeface.PLAIN, size, List.of(MORE));
    }
  }

  /**
   * Both names in full, since names may differ in the last letter only; longer names are set
   * smaller.
   */
  private void title(String text) {
    double size = Lettering.LARGE;
    double room = frame.getWidth() - 9;
    List<String> lines = Lettering.whole(Typeface.BOLD, size, text, room);
    if (lines.size() > MAX_TITLE_LINES) {
      size = Lettering.SMALL;
      lines = Lettering.whole(Typeface.BOLD, size, text, room);
    }
    write(Typeface.BOLD, size, lines);
  }

  private boolean goes(List<String> lines, double size, double bottom) {
    return y
            + lines.stream()
                .mapToDouble(line -> lines(Typeface.PLAIN, size, line).size() * (size + 1.5))
                .sum()
        <= bottom;
  }

  private double captionHeight(Caption caption) {
    return lines(Typeface.BOLD, Lettering.SMALL, caption.caution()).size() * (Lettering.SMALL + 1.5)
        + 4;
  }

  private List<String> lines(Typeface face, double size, String text) {
    return Lettering.wrapped(face, size, text, frame.getWidth() - 9);
  }

  private void write(Typeface face, double size, List<String> lines) {
    for (String line : lines) {
      y += size + 1.5;
      Lettering.write(pen, face, size, line, frame.getMinX() + 5, y - 1);
    }
  }

  private void rule() {
    y += 2.5;
    pen.setStroke(THIN);
    pen.setColor(Color.GRAY);
    pen.draw(new Line2D.Double(frame.getMinX(), y, frame.getMaxX(), y));
  }
}
