package org.jawroom.report.card;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jawroom.advice.Explanation;
import org.jawroom.drawing.Picture;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Turn;
import org.jawroom.placement.Outcome;
import org.jawroom.placement.Recommendation;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/** The drawing of a card: the table from above with the outline of the vise. */
final class CardPicture implements Picture {
  private static final double WIDTH = 400;
  private static final double MARGIN = 40;

  private final Machine machine;
  private final Vise vise;
  private final Recommendation place;
  private final double scale;

  private CardPicture(Outcome outcome, Recommendation place) {
    this.machine = outcome.machine();
    this.vise = outcome.vise();
    this.place = place;
    this.scale = (WIDTH - 2 * MARGIN) / machine.tableLength();
  }

  static Picture of(Explanation explanation) {
    Outcome outcome = explanation.advice().outcome();
    return new CardPicture(outcome, outcome.recommended().orElseThrow());
  }

  @Override
  public double width() {
    return WIDTH;
  }

  @Override
  public double height() {
    return machine.tableWidth() * scale + 2 * MARGIN;
  }

  @Override
  public void paint(Graphics2D pen) {
    Graphics2D own = (Graphics2D) pen.create();
    own.setStroke(new BasicStroke(1.5f));
    draw(own, Interval.around(0, machine.tableLength() / 2), Interval.around(0, machine.tableWidth() / 2));
    Turn turn = place.handleTo();
    Interval u = Interval.of(-orLittle(vise.base().rearReach()), orLittle(vise.base().frontReach()));
    Interval v = Interval.around(0, orLittle(vise.base().width()) / 2);
    draw(own, turn.x(u, v).plus(place.x()), turn.y(u, v).plus(place.y()));
    own.dispose();
  }

  /** Only for the eye: what is not known is drawn as a dot. */
  private static long orLittle(Dimension dimension) {
    return dimension.isKnown() ? dimension.length() : Length.MM;
  }

  private void draw(Graphics2D pen, Interval x, Interval y) {
    double left = MARGIN + (x.lo() + machine.tableLength() / 2) * scale;
    double top = MARGIN + (machine.tableWidth() / 2 - y.hi()) * scale;
    pen.draw(new Rectangle2D.Double(left, top, x.length() * scale, y.length() * scale));
  }
}
