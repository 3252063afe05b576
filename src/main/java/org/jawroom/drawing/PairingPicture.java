package org.jawroom.drawing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.drawing.file.Picture;
import org.jawroom.drawing.paint.ViewPainter;
import org.jawroom.drawing.paint.ViewProjection;
import org.jawroom.drawing.text.Lettering;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.drawing.view.Caption;
import org.jawroom.drawing.view.Neighbour;
import org.jawroom.drawing.view.Scene;
import org.jawroom.drawing.view.Tape;
import org.jawroom.drawing.view.View;
import org.jawroom.drawing.view.View.Flat;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.shop.machine.Machine;

/**
 * A pairing from above and from the right, at one scale, with the limiting clearance as a
 * dimension: half a page of A4 or Letter.
 */
public final class PairingPicture implements Picture {
  private static final double WIDTH = 540;
  private static final double HEIGHT = 372;

  /** The margin around the outermost faces, as a fraction of the longest side. */
  private static final int BEYOND = 26;

  private final Caption caption;
  private final Scene scene;
  private final double width;
  private final double height;
  private final List<Tape> tapes;
  private final boolean titled;

  private PairingPicture(
      Caption caption, Scene scene, List<Tape> tapes, double width, double height, boolean titled) {
    this.caption = caption;
    this.scene = scene;
    this.width = width;
    this.height = height;
    this.tapes = tapes;
    this.titled = titled;
  }

  /**
   * With title block.
   *
   * @param layout the positions of everything drawn
   * @param beside further vises on the table
   * @param limit what limits the place; empty if no listed guard can be hit
   */
  public static PairingPicture titled(
      Machine machine,
      Layout layout,
      List<Neighbour> beside,
      Optional<Limit> limit,
      Caption caption) {
    return new PairingPicture(
        caption, new Scene(machine, layout, beside, limit), List.of(), WIDTH, HEIGHT, true);
  }

  /**
   * The views alone with the tape measures as dimension lines, for a card that prints the text
   * itself; the size is in points.
   *
   * @param beside further vises on the table
   */
  public static PairingPicture onCard(
      Machine machine,
      Layout layout,
      List<Neighbour> beside,
      Optional<Limit> limit,
      Caption caption,
      List<Tape> tapes,
      double width,
      double height) {
    return new PairingPicture(
        caption,
        new Scene(machine, layout, beside, limit),
        List.copyOf(tapes),
        width,
        height,
        false);
  }

  @Override
  public double width() {
    return width;
  }

  @Override
  public double height() {
    return height;
  }

  @Override
  public void paint(Graphics2D pen) {
    AffineTransform before = pen.getTransform();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.setColor(java.awt.Color.WHITE);
    pen.fill(new Rectangle2D.Double(0, 0, width, height));
    Flat plan = scene.extent(View.PLAN);
    long beyond = Math.max(plan.right().length(), plan.up().length()) / BEYOND;
    Flat planSeen = new Flat(plan.right().grown(beyond, beyond), plan.up().grown(beyond, beyond));
    Flat side = scene.extent(View.SIDE);
    Flat sideSeen = new Flat(planSeen.up(), side.up().grown(0, beyond));
    Arrangement sheet =
        titled
            ? Arrangement.of(width, height, planSeen, sideSeen)
            : Arrangement.untitled(width - 2, height, planSeen, sideSeen);
    view(
        pen,
        View.PLAN,
        planSeen,
        sheet.plan(),
        sheet.scale(),
        "FROM ABOVE · operator at the bottom");
    view(
        pen,
        View.SIDE,
        sideSeen,
        sheet.side(),
        sheet.scale(),
        "FROM THE RIGHT · operator at the left");
    sheet
        .title()
        .ifPresent(
            frame ->
                new TitleBlock(pen, frame, sheet.scale(), scene.hasOpenFaces()).paint(caption));
    pen.setTransform(before);
  }

  private void view(
      Graphics2D pen, View view, Flat seen, Rectangle2D frame, double scale, String heading) {
    Lettering.write(
        pen,
        Typeface.BOLD,
        6.5,
        Lettering.fitted(Typeface.BOLD, 6.5, heading, Math.max(frame.getWidth(), 150)),
        frame.getMinX(),
        frame.getMinY() - 3);
    ViewProjection projection = new ViewProjection(view, seen, frame, scale);
    new ViewPainter(pen, projection).paint(scene.marks(view), scene.measure(), tapes, caption);
  }
}
