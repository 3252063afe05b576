package org.jawroom.drawing;

import java.util.List;

/**
 * The words of a drawing; whoever asks for it finds them.
 *
 * @param title names of vise and machine
 * @param lines verdict, clearances, place, a line each; long ones are wrapped
 * @param measure the value of the limiting clearance or overlap; empty where nothing limits
 * @param measureName what it lies between
 * @param unit the word for the unit of length, {@code unitLength} its size in half-nanometres
 * @param caution stands under everything
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
