package org.jawroom.placement.space;

import org.jawroom.geometry.Length;

/**
 * A closed rectangle of positions that may be empty ({@code lo} above {@code hi}), unlike {@link
 * org.jawroom.geometry.Rectangle}.
 */
public record Window(long xLo, long xHi, long yLo, long yHi) {

  public static final Window EVERYWHERE =
      new Window(-Length.ENDLESS, Length.ENDLESS, -Length.ENDLESS, Length.ENDLESS);

  public Window meet(Window other) {
    return new Window(
        Math.max(xLo, other.xLo),
        Math.min(xHi, other.xHi),
        Math.max(yLo, other.yLo),
        Math.min(yHi, other.yHi));
  }
}
