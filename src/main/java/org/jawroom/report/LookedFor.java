package org.jawroom.report;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;

/** What nobody says to have looked for on a machine: it may be there all the same. */
public final class LookedFor {
  private static final List<String> KINDS =
      List.of("head", "tool changer", "nozzle", "sill", "column", "cover");

  private LookedFor() {}

  /** The kinds of guard neither named as looked for nor listed with the machine. */
  public static List<String> not(Machine machine) {
    Set<String> found =
        Stream.concat(machine.lookedFor().stream(), machine.guardRows().stream().map(Guard::kind))
            .map(LookedFor::plain)
            .collect(Collectors.toSet());
    return KINDS.stream().filter(kind -> !found.contains(kind)).toList();
  }

  /** In words, for the machine's row. */
  static String words(Machine machine) {
    List<String> kinds = not(machine);
    return kinds.isEmpty()
        ? "all usual guards looked for"
        : "not looked for: " + String.join(", ", kinds);
  }

  private static String plain(String kind) {
    return kind.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
  }
}
