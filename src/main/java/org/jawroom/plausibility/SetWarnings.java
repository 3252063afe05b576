package org.jawroom.plausibility;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.plausibility.warning.Seriousness;
import org.jawroom.plausibility.warning.Warning;
import org.jawroom.shop.Standing;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.vise.Vise;

/**
 * More vises of a kind than the shop has, in a set or standing on the machines; one that stands
 * turned on its swivel base is of the kind of its row.
 */
final class SetWarnings {
  private SetWarnings() {}

  static List<Warning> of(ViseSet set) {
    return tooMany(set.members().stream(), ViseSet.Member::vise, ViseSet.Member::count)
        .map(
            kind ->
                new Warning(
                    Seriousness.UNUSUAL,
                    "sets",
                    set.name(),
                    "count",
                    kind.count()
                        + " of "
                        + kind.name()
                        + ", but its quantity is "
                        + kind.quantity()
                        + "; set that right, or buy the rest"))
        .toList();
  }

  /** For each kind of which more stand on the machines than the shop has. */
  static List<Warning> of(List<Standing> standing) {
    return tooMany(standing.stream(), Standing::vise, one -> 1)
        .map(
            kind ->
                new Warning(
                    Seriousness.UNUSUAL,
                    "standing",
                    kind.name(),
                    "vise",
                    kind.count()
                        + " stand on the machines, but its quantity is "
                        + kind.quantity()
                        + "; set one of them right"))
        .toList();
  }

  /** How many are used of a kind of which the shop has {@code quantity}. */
  private record Kind(String name, long count, int quantity) {}

  private static <T> Stream<Kind> tooMany(
      Stream<T> used, Function<T, Vise> vise, ToLongFunction<T> count) {
    Map<String, List<T>> kinds =
        used.collect(
            Collectors.groupingBy(
                one -> vise.apply(one).row(), LinkedHashMap::new, Collectors.toList()));
    return kinds.entrySet().stream()
        .map(
            kind ->
                new Kind(
                    kind.getKey(),
                    kind.getValue().stream().mapToLong(count).sum(),
                    vise.apply(kind.getValue().get(0)).quantity()))
        .filter(kind -> kind.count() > kind.quantity());
  }
}
