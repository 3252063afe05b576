package org.jawroom.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jawroom.shop.Settings;

/**
 * A part and a guard that are held against each other in one situation.
 *
 * @param required the clearance asked of the pair
 */
public record Pair(Part part, SweptGuard guard, long required) {

  /** Of equal margins the first pair in this order is the one that limits. */
  private static final Comparator<Pair> PRECEDENCE =
      Comparator.comparingInt((Pair pair) -> pair.guard.rank())
          .thenComparingInt(pair -> pair.part.rank())
          .thenComparing(pair -> pair.part.situation());

  /** Both off the wrong way: worst case. */
  public long tolerance() {
    return guard.tolerance() + part.tolerance();
  }

  /** Every pair there is, in the order in which equal margins are told apart. */
  public static List<Pair> all(Settings settings, List<Part> parts, List<SweptGuard> guards) {
    return all(settings.handRoom(), parts, guards);
  }

  /** The same, {@code handRoom} being the least clearance of a handle while loading. */
  public static List<Pair> all(long handRoom, List<Part> parts, List<SweptGuard> guards) {
    List<Pair> pairs = new ArrayList<>();
    for (SweptGuard guard : guards) {
      for (Part part : parts) {
        if (part.situation() == guard.situation() && (!guard.table() || meetsTable(part))) {
          pairs.add(new Pair(part, guard, ClearanceClass.of(part).required(guard, handRoom)));
        }
      }
    }
    pairs.sort(PRECEDENCE);
    return pairs;
  }

  /**
   * The table is held against the handle only while loading, and against what reaches below its
   * top.
   */
  static boolean meetsTable(Part part) {
    return part.handle() ? part.situation() == Situation.LOADING : part.w().lo() < 0;
  }
}
