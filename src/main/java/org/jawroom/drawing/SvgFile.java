package org.jawroom.drawing;

import java.nio.charset.StandardCharsets;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGUnits;
import org.jfree.svg.ViewBox;

/** A picture as SVG: vector, text as text, each thing a group with a name of ours. */
public final class SvgFile {
  private static final String FAMILY = "\"Liberation Sans\", Arial, Helvetica, sans-serif";

  private SvgFile() {}

  public static byte[] of(Picture picture) {
    SVGGraphics2D pen = new SVGGraphics2D(picture.width(), picture.height(), SVGUnits.PT);
    pen.setFontFunction(family -> FAMILY);
    pen.setDefsKeyPrefix("d");
    picture.paint(pen);
    String element =
        pen.getSVGElement(
            null, true, new ViewBox(0, 0, (int) picture.width(), (int) picture.height()), null, null);
    return ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element + "\n")
        .getBytes(StandardCharsets.UTF_8);
  }
}
