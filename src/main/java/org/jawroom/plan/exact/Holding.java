package org.jawroom.plan.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jawroom.plan.choice.Task;

/** What must be held: groups of jobs, and how many pieces of them may be missed. Immutable. */
final class Holding {

  /**
   * Jobs held by the same fits.
   *
   * @param fits that hold them
   * @param quantity pieces
   */
  record Held(BitSet fits, long quantity) {}

  private final List<Held> groups;
  private final long spare;

  private Holding(List<Held> groups, long spare) {
    this.groups = List.copyOf(groups);
    this.spare = spare;
  }

  /**
   * At least {@code pieces}. A group that is held whenever another one is that must be held is left
   * out.
   */
  static Holding of(Task task, long pieces) {
    List<Held> groups = new ArrayList<>();
    long spare = -pieces;
    for (Task.Group group : task.groups()) {
      BitSet fits = new BitSet();
      group.fits().forEach(fits::set);
      groups.add(new Held(fits, group.quantity()));
      spare += group.quantity();
    }
    long most = spare;
    List<Held> left = new ArrayList<>(groups);
    for (Held group : groups) {
      if (left.stream()
          .anyMatch(
              other ->
                  !other.equals(group)
                      && other.quantity() > most
                      && isWithin(other.fits(), group.fits()))) {
        left.remove(group);
      }
    }
    return new Holding(left, spare);
  }

  private static boolean isWithin(BitSet inner, BitSet outer) {
    BitSet beyond = (BitSet) inner.clone();
    beyond.andNot(outer);
    return beyond.isEmpty();
  }

  /** The groups that the fits do not hold; empty if they hold enough. */
  List<Held> missed(BitSet fits) {
    List<Held> missed = groups.stream().filter(group -> !group.fits().intersects(fits)).toList();
    return missed.stream().mapToLong(Held::quantity).sum() > spare ? missed : List.of();
  }

  /** Some of the fits, none of which can be left out, that hold enough if all of them do. */
  BitSet needed(BitSet fits) {
    BitSet needed = (BitSet) fits.clone();
    fits.stream()
        .forEach(
            fit -> {
              needed.clear(fit);
              needed.set(fit, !missed(needed).isEmpty());
            });
    return needed;
  }

  boolean mayMiss(Held group) {
    return group.quantity() <= spare;
  }

  /** The same, with a group given up. */
  Holding without(Held group) {
    List<Held> left = new ArrayList<>(groups);
    left.remove(group);
    return new Holding(left, spare - group.quantity());
  }
}
