package org.jawroom.plan.model;

/**
 * A machine with its vise.
 *
 * @param fit the pairing chosen
 * @param count number of vises of the kind to set out, from 1 to {@link Fit#most}
 */
public record Assigned(Fit fit, int count) {
  public Assigned {
    if (count < 1 || count > fit.most()) {
      throw new IllegalArgumentException("count " + count + " is not possible for " + fit.pick());
    }
  }
}
