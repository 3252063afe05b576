package org.jawroom.report.form;

import java.awt.image.BufferedImage;
import java.util.List;

/**
 * One page of a measuring form.
 *
 * @param subject what is measured: {@code machine} or {@code vise}
 * @param title what of it
 * @param sketch the picture with the readings marked
 * @param readings in the order in which they are taped
 * @param traps what goes wrong, one line each
 */
public record FormPage(
    String subject,
    String title,
    BufferedImage sketch,
    List<FormReading> readings,
    List<String> traps) {
  public FormPage {
    readings = List.copyOf(readings);
    traps = List.copyOf(traps);
  }
}
