package org.jawroom.shop;

/**
 * A length that may be known, declared absent ({@code none}) or blank, which means unknown.
 *
 * @param state which of the three
 * @param value half-nanometres if known; 0 otherwise, and must not be read
 */
public record Dimension(State state, long value) {

  /** Whether a dimension is known, declared absent or unknown. */
  public enum State {
    KNOWN,
    NONE,
    BLANK
  }

  public static final Dimension NONE = new Dimension(State.NONE, 0);
  public static final Dimension BLANK = new Dimension(State.BLANK, 0);

  public static Dimension of(long halfNanometres) {
    return new Dimension(State.KNOWN, halfNanometres);
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

  /**
   * The known length.
   *
   * @throws IllegalStateException if it is none or blank: neither stands for zero
   */
  public long length() {
    if (!isKnown()) {
      throw new IllegalStateException("a " + state + " dimension has no length");
    }
    return value;
  }
}
