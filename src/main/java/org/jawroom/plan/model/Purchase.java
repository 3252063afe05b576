package org.jawroom.plan.model;

/**
 * A purchase.
 *
 * @param what a vise or a machine
 * @param index its index in the cell's list of vises or machines
 * @param count at least 1
 * @param price of all of them together, in the smallest coin
 */
public record Purchase(What what, int index, int count, long price) {

  /** What is bought. */
  public enum What {
    VISE,
    MACHINE
  }
}
