package org.jawroom.shop.machine;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The kinds of guard that are easily overlooked when a machine is measured. */
public final class GuardKinds {

  /** In the order of the help text of {@code looked_for}. */
  private static final List<String> FORGOTTEN =
      List.of("head", "tool changer", "nozzle", "sill", "column", "cover");

  private GuardKinds() {}

  /**
   * The kinds neither listed as looked for nor present among the machine's guards, in a fixed
   * order.
   */
  public static List<String> notLookedFor(Machine machine) {
    Set<String> found =
        Stream.concat(machine.lookedFor().stream(), machine.guards().stream().map(Guard::kind))
            .map(GuardKinds::plain)
            .collect(Collectors.toSet());
    return FORGOTTEN.stream().filter(kind -> !found.contains(kind)).toList();
  }

  /** Normalizes case and word separators. */
  private static String plain(String kind) {
    return kind.toLowerCase(Locale.ROOT).replaceAll("[\\s\\p{Z}_-]+", " ").strip();
  }
}
