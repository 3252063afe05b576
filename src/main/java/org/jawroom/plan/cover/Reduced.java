package org.jawroom.plan.cover;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What is left of a cover problem once three rules change nothing any more; each leaves the least
 * number of sets as it is:
 *
 * <ul>
 *   <li>a set within another is dropped;
 *   <li>an element is dropped if every set that holds some other element holds it, too;
 *   <li>the only set that holds an element is taken.
 * </ul>
 */
final class Reduced {
  private final List<BitSet> sets;
  private final SearchBudget work;

  /** The elements still to be held. */
  final BitSet open;

  /** The sets still to choose from. */
  final BitSet allowed = new BitSet();

  final List<Integer> taken = new ArrayList<>();

  /** Of each element the sets that hold it, dropped ones too. */
  final BitSet[] holders;

  Reduced(int elements, List<BitSet> sets, SearchBudget work) {
    this.sets = sets;
    this.work = work;
    open = new BitSet(elements);
    allowed.set(0, sets.size());
    holders = new BitSet[elements];
    for (int element = 0; element < elements; element++) {
      holders[element] = new BitSet(sets.size());
    }
    for (int set = 0; set < sets.size(); set++) {
      int each = set;
      sets.get(set).stream().forEach(element -> holders[element].set(each));
      open.or(sets.get(set));
    }
    boolean changed = true;
    while (changed && work.isLeft()) {
      changed = dropSets() | dropElements() | takeOnly();
    }
  }

  /** The elements of a set that are still to be held. */
  BitSet gain(int set) {
    return work.both(sets.get(set), open);
  }

  /** The sets that hold an element and may still be taken. */
  BitSet choice(int element) {
    return work.both(holders[element], allowed);
  }

  /** From the last on, so that of equal sets the first stays. */
  private boolean dropSets() {
    boolean changed = false;
    for (int set = allowed.length() - 1; set >= 0; set = allowed.previousSetBit(set - 1)) {
      BitSet gain = gain(set);
      if (gain.isEmpty() || isWithinAnother(set, gain)) {
        allowed.clear(set);
        changed = true;
      }
    }
    return changed;
  }

  /** Another set that holds all of {@code gain} holds its first element. */
  private boolean isWithinAnother(int set, BitSet gain) {
    BitSet others = choice(gain.nextSetBit(0));
    for (int other = others.nextSetBit(0); other >= 0; other = others.nextSetBit(other + 1)) {
      if (other != set && work.isWithin(gain, sets.get(other))) {
        return true;
      }
    }
    return false;
  }

  private boolean dropElements() {
    boolean changed = false;
    for (int element = open.nextSetBit(0); element >= 0; element = open.nextSetBit(element + 1)) {
      BitSet choice = choice(element);
      // What this element asks for holds the others of which it is a choice, too.
      BitSet others = gain(choice.nextSetBit(0));
      for (int other = others.nextSetBit(0); other >= 0; other = others.nextSetBit(other + 1)) {
        if (other != element && work.isWithin(choice, holders[other])) {
          open.clear(other);
          changed = true;
        }
      }
    }
    return changed;
  }

  private boolean takeOnly() {
    boolean changed = false;
    for (int element = open.nextSetBit(0); element >= 0; element = open.nextSetBit(element + 1)) {
      BitSet choice = choice(element);
      if (choice.cardinality() == 1) {
        take(choice.nextSetBit(0));
        changed = true;
      }
    }
    return changed;
  }

  private void take(int set) {
    taken.add(set);
    allowed.clear(set);
    open.andNot(sets.get(set));
  }
}
