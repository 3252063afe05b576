package org.jawroom.report.card.block;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** A picture scaled to the frame and centred in it. */
public record PictureFrame(PDFormXObject picture, double width, double height) implements Block {

  @Override
  public void draw(Pen pen, double x, double y) throws IOException {
    double wide = picture.getBBox().getWidth();
    double high = picture.getBBox().getHeight();
    double scale = Math.min(width / wide, height / high);
    pen.picture(picture, x + (width - wide * scale) / 2, y + (height - high * scale) / 2, scale);
  }
}
