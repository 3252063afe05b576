package org.jawroom.drawing.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGUnits;
import org.jfree.svg.ViewBox;

/**
 * A picture as SVG: vector graphics, text as text, each object a group with an identifier of our
 * own.
 */
public final class SvgFile {
  private static final String FAMILY = "\"Liberation Sans\", Arial, Helvetica, sans-serif";

  private SvgFile() {}

  public static byte[] of(Picture picture) {
    SVGGraphics2D pen = new SVGGraphics2D(picture.width(), picture.height(), SVGUnits.PT);
    pen.setFontFunction(family -> FAMILY);
    pen.setDefsKeyPrefix("d");
    pen.setGeomDoubleConverter(SvgFile::short4);
    picture.paint(pen);
    String element =
        pen.getSVGElement(
            null,
            true,
            new ViewBox(0, 0, (int) picture.width(), (int) picture.height()),
            null,
            null);
    return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element + "\n")
        .getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Points to four decimals: finer than any screen shows, and a third of the characters of a full
   * double.
   */
  private static String short4(double value) {
    return BigDecimal.valueOf(value)
        .setScale(4, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
