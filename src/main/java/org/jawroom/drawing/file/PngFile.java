package org.jawroom.drawing.file;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A picture as PNG. */
public final class PngFile {
  private PngFile() {}

  /**
   * Returns the bytes of the file.
   *
   * @param dots per point
   */
  public static byte[] of(Picture picture, double dots) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(picture.width() * dots),
            (int) Math.ceil(picture.height() * dots),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.scale(dots, dots);
    picture.paint(pen);
    pen.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    // No cache file: in a shared folder it cannot always be created.
    ImageIO.setUseCache(false);
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException inMemory) {
      throw new UncheckedIOException(inMemory);
    }
    return bytes.toByteArray();
  }
}
