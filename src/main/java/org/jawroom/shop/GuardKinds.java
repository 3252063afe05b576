package org.jawroom.shop;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The kinds of guard that people forget to look for. */
public final class GuardKinds {

  /** As the help text of {@code looked_for} lists them. */
  private static final List<String> FORGOTTEN =
      List.of("head", "tool changer", "nozzle", "sill", "column", "cover");

  private GuardKinds() {}

  /** Those neither named as looked for nor the kind of a guard of the machine, in a fixed order. */
  public static List<String> notLookedFor(Machine machine) {
    Set<String> found =
        Stream.concat(machine.lookedFor().stream(), machine.guards().stream().map(Guard::kind))
            .map(GuardKinds::plain)
            .collect(Collectors.toSet());
    return FORGOTTEN.stream().filter(kind -> !found.contains(kind)).toList();
  }

  /** Whatever the case, and whatever joins the words. */
  private static String plain(String kind) {
    return kind.toLowerCase(Locale.ROOT).replaceAll("[\\s\\p{Z}_-]+", " ").strip();
  }
}
