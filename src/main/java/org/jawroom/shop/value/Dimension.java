package org.jawroom.shop.value;

import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;

/**
 * A length that may be known, known within bounds, declared absent ({@code none}) or blank, which
 * means unknown.
 *
 * @param state which of these
 * @param lo half-nanometres, the least it can be if known or within bounds; −{@link
 *     Length#ENDLESS}: no bound. 0 otherwise, and must not be read
 * @param hi the greatest likewise; a known one has both alike
 */
public record Dimension(State state, long lo, long hi) {

  /** What is known of a dimension. */
  public enum State {
    KNOWN,
    /** Somewhere from {@code lo} to {@code hi}, both included. */
    WITHIN,
    NONE,
    BLANK
  }

  public static final Dimension NONE = new Dimension(State.NONE, 0, 0);
  public static final Dimension BLANK = new Dimension(State.BLANK, 0, 0);

  public Dimension {
    if (state == State.WITHIN ? lo >= hi : lo != hi) {
      throw new IllegalArgumentException(state + " from " + lo + " to " + hi);
    }
  }

  public static Dimension of(long halfNanometres) {
    return new Dimension(State.KNOWN, halfNanometres, halfNanometres);
  }

  /**
   * A length somewhere in a closed interval; known if that is a single value.
   *
   * @param lo −{@link Length#ENDLESS} if there is no least; {@code hi} likewise
   */
  public static Dimension within(long lo, long hi) {
    return lo == hi ? of(lo) : new Dimension(State.WITHIN, lo, hi);
  }

  public boolean isKnown() {
    return state == State.KNOWN;
  }

  public boolean isNone() {
    return state == State.NONE;
  }

  public boolean isBlank() {
    return state == State.BLANK;
  }

  /** Whether it may have more than one value: known within bounds only, or blank. */
  public boolean isOpen() {
    return state == State.WITHIN || state == State.BLANK;
  }

  /**
   * The known length.
   *
   * @throws IllegalStateException if it is not known exactly: neither none nor blank stands for
   *     zero
   */
  public long length() {
    if (!isKnown()) {
      throw new IllegalStateException("a " + state + " dimension has no length");
    }
    return lo;
  }

  /**
   * Every value it may have; a blank one has no upper end.
   *
   * @param least of a blank: 0, or −{@link Length#ENDLESS} for what may be negative
   * @throws IllegalStateException if it is none
   */
  public Interval values(long least) {
    if (isNone()) {
      throw new IllegalStateException("none has no value");
    }
    return isBlank() ? Interval.of(least, Length.ENDLESS) : Interval.of(lo, hi);
  }
}
