package org.jawroom.plan.cover;

import java.util.BitSet;

/**
 * Counts the work of a search in 64-bit words compared, so that it ends at the same point always.
 */
final class SearchBudget {

  /** What a comparison costs besides its words. */
  private static final int EACH = 8;

  private long left;

  SearchBudget(long words) {
    left = words;
  }

  boolean isLeft() {
    return left > 0;
  }

  /** What is in both, as a new set. */
  BitSet both(BitSet one, BitSet other) {
    BitSet both = (BitSet) one.clone();
    both.and(other);
    spend(one, other);
    return both;
  }

  boolean isWithin(BitSet inner, BitSet outer) {
    BitSet rest = (BitSet) inner.clone();
    rest.andNot(outer);
    spend(inner, outer);
    return rest.isEmpty();
  }

  private void spend(BitSet one, BitSet other) {
    left -= EACH + (one.length() + other.length()) / Long.SIZE;
  }
}
