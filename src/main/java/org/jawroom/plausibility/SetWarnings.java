package org.jawroom.plausibility;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jawroom.shop.Standing;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.vise.Vise;

/** More vises of a kind than the shop has, in a set or standing on the machines. */
final class SetWarnings {
  private SetWarnings() {}

  static List<Warning> of(ViseSet set) {
    return set.members().stream()
        .filter(member -> member.count() > member.vise().quantity())
        .map(
            member ->
                new Warning(
                    Seriousness.UNUSUAL,
                    "sets",
                    set.name(),
                    "count",
                    member.count()
                        + " of "
                        + member.vise().name()
                        + ", but its quantity is "
                        + member.vise().quantity()
                        + "; set that right, or buy the rest"))
        .toList();
  }

  /** For each kind of which more stand on the machines than the shop has. */
  static List<Warning> of(List<Standing> standing) {
    Map<Vise, Long> counts =
        standing.stream()
            .collect(
                Collectors.groupingBy(Standing::vise, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .filter(kind -> kind.getValue() > kind.getKey().quantity())
        .map(
            kind ->
                new Warning(
                    Seriousness.UNUSUAL,
                    "standing",
                    kind.getKey().name(),
                    "vise",
                    kind.getValue()
                        + " stand on the machines, but its quantity is "
                        + kind.getKey().quantity()
                        + "; set one of them right"))
        .toList();
  }
}
