package org.jawroom.app.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Footprint;
import org.jawroom.shop.Standing;

/** Which rows of the table {@code standing} stand beside a vise whose place is given. */
public final class StandingBeside {
  private StandingBeside() {}

  /**
   * All of them but the row of this very vise: of those of its kind on its machine the nearest. As
   * long as the shop has one more of the kind, which stands in no row, only one that cannot stand
   * there besides, since their work areas overlap.
   */
  public static List<Standing> of(Standing standing, List<Standing> rows) {
    List<Standing> kind =
        rows.stream().filter(row -> row.vise().row().equals(standing.vise().row())).toList();
    boolean isAnySpare = kind.size() < standing.vise().quantity();
    Optional<Standing> its =
        kind.stream()
            .filter(row -> row.machine().name().equals(standing.machine().name()))
            .filter(row -> !isAnySpare || overlap(standing, row))
            .min(Comparator.comparingLong(row -> distance(standing, row)));
    List<Standing> others = new ArrayList<>(rows);
    its.ifPresent(others::remove);
    return others;
  }

  private static boolean overlap(Standing one, Standing other) {
    Rectangle its = workArea(one);
    Rectangle others = workArea(other);
    return its.x().gapTo(others.x()) < 0 && its.y().gapTo(others.y()) < 0;
  }

  private static Rectangle workArea(Standing standing) {
    return Footprint.workArea(standing.vise(), standing.place().handleTo())
        .at(standing.x(), standing.y());
  }

  /** The larger of the distances along x and y. */
  private static long distance(Standing one, Standing other) {
    return Math.max(Math.abs(one.x() - other.x()), Math.abs(one.y() - other.y()));
  }
}
