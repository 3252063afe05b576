package org.jawroom.plan;

/**
 * A machine with its vise.
 *
 * @param fit the pairing chosen
 * @param count how many of the kind to set out, at least 1
 */
public record Assigned(Fit fit, int count) {
  public Assigned {
    if (count < 1 || count > fit.most()) {
      throw new IllegalArgumentException("from one to as many as stand there: " + fit.pick());
    }
  }
}
