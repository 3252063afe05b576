package org.jawroom.tables.vise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.tables.row.Row;

/** Parses the bolts of a vise: the pair in its own row, and the rows of {@code mounts}. */
public final class MountReader {
  private MountReader() {}

  /** A bolt and the name of the mount it belongs to. */
  public record Named(String mount, Bolt bolt) {}

  /** Parses one row of {@code mounts}; empty, with faults, if it is unsound. */
  public static Optional<Named> read(Row row, String name) {
    Dimension u = row.dimension("u");
    Dimension v = row.dimension("v");
    Dimension holeU = row.dimension("hole_u");
    Dimension holeV = row.dimension("hole_v");
    row.unit();
    return row.isSound()
        ? Optional.of(new Named(name, new Bolt(u, v, holeU, holeV)))
        : Optional.empty();
  }

  /** The mounts of a sound vise row: its own pair first, then the others in order of appearance. */
  static List<Mount> mounts(Row vise, List<Named> rows) {
    List<Mount> mounts = new ArrayList<>();
    Dimension spacing = vise.dimension("bolt_spacing");
    Dimension u = vise.dimension("bolt_u");
    Dimension holeU = vise.dimension("bolt_hole_u");
    Dimension holeV = vise.dimension("bolt_hole_v");
    if (!spacing.isNone()) {
      mounts.add(Mount.baseBolts(u, spacing, holeU, holeV));
    }
    Map<String, List<Bolt>> byName = new LinkedHashMap<>();
    for (Named named : rows) {
      byName.computeIfAbsent(named.mount(), none -> new ArrayList<>()).add(named.bolt());
    }
    byName.forEach((name, bolts) -> mounts.add(new Mount(name, false, bolts)));
    return mounts;
  }
}
