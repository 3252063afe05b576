package org.jawroom.drawing.view;

import java.util.List;

/**
 * The text of a drawing; the caller supplies it.
 *
 * @param title names of vise and machine
 * @param lines verdict, clearances, place, one a line; long ones are wrapped
 * @param measure the value of the limiting clearance or overlap; empty if nothing limits
 * @param measureName the part and the guard that it lies between
 * @param unit the word for the unit of length
 * @param unitLength the unit in half-nanometres
 * @param caution printed below everything else
 */
public record Caption(
    String title,
    List<String> lines,
    String measure,
    String measureName,
    String unit,
    long unitLength,
    String caution) {
  public Caption {
    lines = List.copyOf(lines);
  }
}
