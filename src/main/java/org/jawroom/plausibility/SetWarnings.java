package org.jawroom.plausibility;

import java.util.List;
import org.jawroom.shop.ViseSet;

/** Sets that want more vises of a kind than the shop has. */
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
}
