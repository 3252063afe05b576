package org.jawroom.clearance.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.shop.Settings;

/**
 * A part and a guard compared in one situation.
 *
 * @param required the required clearance of the pair
 */
public record Pair(Part part, SweptGuard guard, long required) {

  /** Among equal margins the first pair in this order is the limiting one. */
  private static final Comparator<Pair> PRECEDENCE =
      Comparator.comparingInt((Pair pair) -> pair.guard.rank())
          .thenComparingInt(pair -> pair.part.rank())
          .thenComparing(pair -> pair.part.situation());

  /** Worst-case stack: both tolerances in the unfavourable direction. */
  public long tolerance() {
    return guard.tolerance() + part.tolerance();
  }

  /** All pairs, in order of precedence among equal margins. */
  public static List<Pair> all(Settings settings, List<Part> parts, List<SweptGuard> guards) {
    return all(settings.handRoom(), parts, guards);
  }

  /** All pairs, with {@code handRoom} as the least clearance of a handle while loading. */
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
   * Whether a part is checked against the table: the handle only while loading, any other part only
   * if it reaches below the table top.
   */
  public static boolean meetsTable(Part part) {
    return part.handle() ? part.situation() == Situation.LOADING : part.w().lo() < 0;
  }
}
