package org.jawroom.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.cell.CellPlan;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Standing;
import org.jawroom.shop.vise.Vise;

/**
 * Whether vises that the plan leaves on a machine may also stay in their places. A plan counts
 * kinds; where they stand is known of the table {@code standing} only.
 */
record StayWords(CellPlan plan, PeopleUnit unit) {
  static final String STAYS = "as it is";

  private static final String ELSEWHERE = "same kind, but not as it stands now";

  /** Where the plan has one vise. */
  private record Spot(Vise vise, Orientation handleTo, String mount, long x, long y) {

    /** Whether it stands there: what its measures may be off apart, no figure printed differs. */
    boolean isTaken(Standing now, PeopleUnit unit) {
      long off = Math.max(Math.abs(now.x() - x), Math.abs(now.y() - y)) - now.tolerance();
      return now.vise().name().equals(vise.name())
          && now.place().handleTo() == handleTo
          && now.mount().equals(mount)
          && unit.rounded(Math.max(0, off), Rounding.NEAREST) == 0;
    }
  }

  /**
   * What to say of a machine that keeps its kinds of vise.
   *
   * @throws java.util.NoSuchElementException if it gets no vise
   */
  String of(CellPlan.Row row) {
    return isMoved(row) ? ELSEWHERE : STAYS;
  }

  /**
   * Whether vises of its kinds that stand there now stand elsewhere in the plan, or beside others.
   * Where none of its kinds stands there, it was told to keep an earlier plan, without places.
   */
  boolean isMoved(CellPlan.Row row) {
    String machine = plan.machine(row).name();
    List<Standing> now =
        plan.of().shop().standing().stream()
            .filter(one -> one.machine().name().equals(machine))
            .toList();
    List<Spot> spots = spots(row);
    boolean isKnown =
        now.stream()
            .anyMatch(
                one -> spots.stream().anyMatch(spot -> spot.vise().row().equals(one.vise().row())));
    return isKnown
        && (now.size() != spots.size()
            || !spots.stream()
                .allMatch(spot -> now.stream().anyMatch(one -> spot.isTaken(one, unit))));
  }

  private List<Spot> spots(CellPlan.Row row) {
    List<Spot> spots = new ArrayList<>();
    if (plan.set(row).isPresent()) {
      plan.set(row).get().row().stands().forEach(one -> spots.add(spot(one.vise(), one.place())));
      return spots;
    }
    Vise vise = plan.pairing(row).outcome().vise();
    Optional<Orientation> turn = plan.pairing(row).sideBySide().handleTo();
    for (Place place : plan.sideBySide(row)) {
      String mount = plan.pairing(row).sideBySide().mount();
      spots.add(new Spot(vise, turn.orElseThrow(), mount, place.x(), place.y()));
    }
    if (spots.isEmpty()) {
      spots.add(spot(vise, plan.pairing(row).place().orElseThrow()));
    }
    return spots;
  }

  private static Spot spot(Vise vise, Recommendation place) {
    return new Spot(vise, place.handleTo(), place.mount(), place.x(), place.y());
  }
}
