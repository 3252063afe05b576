package org.jawroom.plan.cover;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Branch and bound for the fewest sets: after {@link Reduced} it branches over the sets that hold
 * the element with the fewest of them. A branch ends where as many sets as the best cover has are
 * certainly needed; elements of which no two lie in one set need a set each.
 */
public final class MinimumCover {

  /** The most work: seconds, where a thousand sets without structure would take years. */
  private static final long WORDS = 1_500_000_000L;

  private final List<BitSet> sets;
  private final SearchBudget work;
  private final Reduced rest;
  private List<Integer> best;
  private boolean cutOff;

  private MinimumCover(int elements, List<BitSet> sets, SearchBudget work) {
    this.sets = sets;
    this.work = work;
    rest = new Reduced(elements, sets, work);
    best = greedy();
  }

  /**
   * Finds the fewest of {@code sets} that hold every element that any of them holds.
   *
   * @param elements their number; the sets hold some of 0 to {@code elements - 1}
   * @throws IllegalArgumentException if a set holds another element
   */
  public static Cover of(int elements, List<BitSet> sets) {
    return of(elements, sets, WORDS);
  }

  /** The same with at most that much work. */
  static Cover of(int elements, List<BitSet> sets, long words) {
    BitSet held = new BitSet(elements);
    sets.forEach(held::or);
    if (held.length() > elements) {
      throw new IllegalArgumentException("element " + (held.length() - 1) + " of " + elements);
    }
    MinimumCover search = new MinimumCover(elements, sets, new SearchBudget(words));
    int atLeast = search.rest.taken.size() + search.needed(search.ranked(search.rest.open));
    search.search(new ArrayList<>());
    List<Integer> taken = new ArrayList<>(search.rest.taken);
    taken.addAll(search.best);
    taken.sort(Comparator.naturalOrder());
    BitSet unheld = new BitSet(elements);
    unheld.set(0, elements);
    unheld.andNot(held);
    return new Cover(
        taken, search.cutOff ? atLeast : taken.size(), unheld.stream().boxed().toList());
  }

  /**
   * Takes the set with the most elements not held yet, again and again, then drops the needless.
   */
  private List<Integer> greedy() {
    BitSet open = (BitSet) rest.open.clone();
    List<Integer> taken = new ArrayList<>();
    while (!open.isEmpty()) {
      int most = -1;
      int gain = 0;
      for (int set = rest.allowed.nextSetBit(0); set >= 0; set = rest.allowed.nextSetBit(set + 1)) {
        int here = work.both(sets.get(set), open).cardinality();
        if (here > gain) {
          most = set;
          gain = here;
        }
      }
      taken.add(most);
      open.andNot(sets.get(most));
    }
    for (Integer one : List.copyOf(taken)) {
      BitSet without = (BitSet) rest.open.clone();
      taken.stream().filter(other -> !other.equals(one)).forEach(o -> without.andNot(sets.get(o)));
      if (without.isEmpty()) {
        taken.remove(one);
      }
    }
    return taken;
  }

  private void search(List<Integer> taken) {
    if (rest.open.isEmpty()) {
      best = taken.size() < best.size() ? List.copyOf(taken) : best;
      return;
    }
    if (!work.isLeft()) {
      cutOff = true;
      return;
    }
    List<Choice> ranked = ranked(rest.open);
    if (ranked.get(0).sets.isEmpty() || taken.size() + needed(ranked) >= best.size()) {
      return;
    }
    List<Integer> tried = ranked.get(0).sets.stream().boxed().toList();
    for (int set : widestFirst(tried)) {
      BitSet gain = rest.gain(set);
      rest.open.andNot(gain);
      rest.allowed.clear(set);
      taken.add(set);
      search(taken);
      taken.remove(taken.size() - 1);
      rest.open.or(gain);
      // It stays out of the branches beside: a cover with it has been sought.
    }
    tried.forEach(rest.allowed::set);
  }

  private List<Integer> widestFirst(List<Integer> tried) {
    return tried.stream()
        .sorted(Comparator.comparingInt((Integer set) -> -rest.gain(set).cardinality()))
        .toList();
  }

  /** An element with the sets that may be taken for it. */
  private record Choice(BitSet sets, int count) {}

  /** Those with the fewest sets first. */
  private List<Choice> ranked(BitSet open) {
    List<Choice> ranked = new ArrayList<>(open.cardinality());
    for (int element = open.nextSetBit(0); element >= 0; element = open.nextSetBit(element + 1)) {
      BitSet choice = rest.choice(element);
      ranked.add(new Choice(choice, choice.cardinality()));
    }
    ranked.sort(Comparator.comparingInt(Choice::count));
    return ranked;
  }

  /**
   * How many sets the open elements need at least: one for each of some elements of which no two
   * lie in one set, and at least so many that the largest hold that many elements.
   */
  private int needed(List<Choice> ranked) {
    BitSet used = new BitSet();
    int apart = 0;
    for (Choice choice : ranked) {
      if (!used.intersects(choice.sets)) {
        used.or(choice.sets);
        apart++;
      }
    }
    return Math.max(apart, bySize(ranked));
  }

  private int bySize(List<Choice> ranked) {
    int[] sizes = rest.allowed.stream().map(set -> rest.gain(set).cardinality()).sorted().toArray();
    int left = ranked.size();
    int taken = 0;
    while (left > 0 && taken < sizes.length) {
      taken++;
      left -= sizes[sizes.length - taken];
    }
    return taken;
  }
}
