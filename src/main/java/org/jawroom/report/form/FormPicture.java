package org.jawroom.report.form;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jawroom.drawing.file.Picture;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.report.wording.Cautions;

/** A page of the form, drawn on A4 in points; black lines, so that it prints in black and white. */
final class FormPicture implements Picture {
  private static final double WIDTH = 595;
  private static final double HEIGHT = 842;
  private static final double MARGIN = 36;
  private static final double ROOM = WIDTH - 2 * MARGIN;
  private static final double GUTTER = 16;
  private static final double COLUMN = (ROOM - GUTTER) / 2;

  private static final double TITLE = 15;
  private static final double NAME = 9;
  private static final double TEXT = 7.5;
  private static final double LINE = 9.2;

  /** A box for a figure, as wide as its column and high enough for handwriting. */
  private static final double BOX_HEIGHT = 17;

  /** The name and the box of a reading. */
  private static final double HEAD = NAME + BOX_HEIGHT + 4;

  /** The least share of the page's width for the sketch: its letters stay legible. */
  private static final double LEAST_SKETCH = 0.75;

  private static final double SKETCH_GAP = 8;
  private static final double TICK = 8;
  private static final double GAP = 5;

  private final FormPage page;
  private final int number;
  private final int of;

  FormPicture(FormPage page, int number, int of) {
    this.page = page;
    this.number = number;
    this.of = of;
  }

  @Override
  public double width() {
    return WIDTH;
  }

  @Override
  public double height() {
    return HEIGHT;
  }

  @Override
  public void paint(Graphics2D pen) {
    Color colour = pen.getColor();
    double y = head(pen);
    y = sketch(pen, y);
    y = readings(pen, y);
    y = traps(pen, y);
    if (y > HEIGHT - MARGIN) {
      throw new IllegalStateException(page.title() + " does not fit on its page: " + y);
    }
    pen.setColor(colour);
  }

  private double head(Graphics2D pen) {
    double y = MARGIN + TITLE;
    Lettering.write(pen, Typeface.BOLD, TITLE, page.title(), MARGIN, y);
    String which = "page " + number + " of " + of;
    double room = Lettering.width(Typeface.PLAIN, TEXT, which);
    Lettering.write(pen, Typeface.PLAIN, TEXT, which, WIDTH - MARGIN - room, y);
    y += 26;
    double at = MARGIN;
    for (String label :
        List.of(page.subject(), "unit: mm / in", "by", "date", "with (tape, caliper …)")) {
      double share = label.startsWith("unit") ? 72 : (ROOM - 72) / 4;
      Lettering.write(pen, Typeface.PLAIN, TEXT, label, at, y);
      double end = at + Lettering.width(Typeface.PLAIN, TEXT, label) + 3;
      if (share > 72) {
        line(pen, end, y + 1.5, at + share - 8, y + 1.5);
      }
      at += share;
    }
    return y + 10;
  }

  /** As wide as the page, or smaller so that the readings and the traps have room below it. */
  private double sketch(Graphics2D pen, double y) {
    double widest = ROOM / page.sketch().getWidth();
    double left = HEIGHT - MARGIN - 1 - SKETCH_GAP - y - readingsHeight() - trapsHeight();
    double scale =
        Math.max(LEAST_SKETCH * widest, Math.min(widest, left / page.sketch().getHeight()));
    AffineTransform place =
        AffineTransform.getTranslateInstance(
            MARGIN + (ROOM - scale * page.sketch().getWidth()) / 2, y);
    place.scale(scale, scale);
    pen.drawImage(page.sketch(), place, null);
    return y + scale * page.sketch().getHeight() + SKETCH_GAP;
  }

  private double readingsHeight() {
    int rows = rows();
    int all = page.readings().size();
    return Math.max(
        height(page.readings().subList(0, rows)), height(page.readings().subList(rows, all)));
  }

  private static double height(List<FormReading> readings) {
    return readings.stream()
        .mapToDouble(
            reading ->
                HEAD
                    + LINE
                        * Lettering.wrapped(Typeface.PLAIN, TEXT, reading.question(), COLUMN).size()
                    + 3
                    + GAP)
        .sum();
  }

  private double trapsHeight() {
    double lines = Lettering.wrapped(Typeface.BOLD, TEXT, Cautions.BRIEF, ROOM).size();
    for (String trap : page.traps()) {
      lines += Lettering.wrapped(Typeface.PLAIN, TEXT, "• " + trap, ROOM).size();
    }
    return 7 + LINE * lines;
  }

  /** Down the left column, then down the right one. */
  private double readings(Graphics2D pen, double top) {
    int rows = rows();
    double left = column(pen, page.readings().subList(0, rows), MARGIN, top);
    double right =
        column(
            pen,
            page.readings().subList(rows, page.readings().size()),
            MARGIN + COLUMN + GUTTER,
            top);
    return Math.max(left, right);
  }

  private int rows() {
    return (page.readings().size() + 1) / 2;
  }

  private double column(Graphics2D pen, List<FormReading> readings, double x, double top) {
    double y = top;
    for (FormReading reading : readings) {
      y = reading(pen, reading, x, y) + GAP;
    }
    return y;
  }

  private double reading(Graphics2D pen, FormReading reading, double x, double top) {
    Lettering.write(pen, Typeface.BOLD, NAME, reading.column(), x, top + NAME);
    double right = x + COLUMN;
    if (reading.mustBeFilled()) {
      endingAt(pen, FormReading.MUST_BE_FILLED, right, top);
    } else {
      double end = tick(pen, FormReading.NOT_MEASURED, right, top);
      if (reading.noneAllowed()) {
        tick(pen, "none", end, top);
      }
    }
    box(pen, x, top + NAME + 4, COLUMN, BOX_HEIGHT);
    double y = top + HEAD;
    for (String line : Lettering.wrapped(Typeface.PLAIN, TEXT, reading.question(), COLUMN)) {
      y += LINE;
      Lettering.write(pen, Typeface.PLAIN, TEXT, line, x, y);
    }
    return y + 3;
  }

  /** Writes a word beside a name; returns where it begins. */
  private static double endingAt(Graphics2D pen, String word, double right, double top) {
    double at = right - Lettering.width(Typeface.PLAIN, TEXT, word);
    Lettering.write(pen, Typeface.PLAIN, TEXT, word, at, top + NAME);
    return at;
  }

  /** A box to tick with its word, ending at {@code right}; returns where the next one may end. */
  private static double tick(Graphics2D pen, String word, double right, double top) {
    double at = endingAt(pen, word, right, top);
    box(pen, at - TICK - 2, top + NAME - TICK + 1, TICK, TICK);
    return at - TICK - 2 - 8;
  }

  private double traps(Graphics2D pen, double top) {
    double y = top + 2;
    line(pen, MARGIN, y, WIDTH - MARGIN, y);
    y += 3;
    for (String trap : page.traps()) {
      y = prose(pen, Typeface.PLAIN, "• " + trap, y);
    }
    return prose(pen, Typeface.BOLD, Cautions.BRIEF, y + 2);
  }

  private static double prose(Graphics2D pen, Typeface face, String text, double top) {
    double y = top;
    for (String line : Lettering.wrapped(face, TEXT, text, ROOM)) {
      y += LINE;
      Lettering.write(pen, face, TEXT, line, MARGIN, y);
    }
    return y;
  }

  private static void line(Graphics2D pen, double x1, double y1, double x2, double y2) {
    pen.setColor(Color.BLACK);
    pen.setStroke(new BasicStroke(0.6f));
    pen.draw(new Line2D.Double(x1, y1, x2, y2));
  }

  private static void box(Graphics2D pen, double x, double y, double width, double height) {
    pen.setColor(Color.BLACK);
    pen.setStroke(new BasicStroke(0.8f));
    pen.draw(new Rectangle2D.Double(x, y, width, height));
  }
}
