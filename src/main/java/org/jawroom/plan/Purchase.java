package org.jawroom.plan;

/**
 * Something to buy.
 *
 * @param what a vise or a machine
 * @param index its place in the cell's list of vises or machines
 * @param count how many, at least 1
 * @param price for all of them together, in the smallest coin
 */
public record Purchase(What what, int index, int count, long price) {

  /** What is bought. */
  public enum What {
    VISE,
    MACHINE
  }
}
