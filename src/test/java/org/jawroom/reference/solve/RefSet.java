package org.jawroom.reference.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.set.SetOutcome.Fits;
import org.jawroom.placement.set.SetOutcome.Hindrance.Kind;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.solve.RefRow.Footing;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;

/** A set of vises on one machine, open readings both ways (sections 9 and 11 of the model). */
public final class RefSet {
  private final Settings settings;
  private final Machine machine;
  private final ViseSet set;
  private final RefRow worst;
  private final RefRow best;

  public RefSet(Settings settings, Machine machine, ViseSet set) {
    this.settings = settings;
    this.machine = machine;
    this.set = set;
    this.worst = new RefRow(RefLevel.WORST, settings, machine, set);
    this.best = new RefRow(RefLevel.BEST, settings, machine, set);
  }

  public Fits fits() {
    if (worst.serves(0)) {
      return Fits.YES;
    }
    return best.serves(0) ? Fits.UNKNOWN : Fits.NO;
  }

  /** The rows at worst, from which all that is reported of a set that fits comes. */
  public RefRow rows() {
    return worst;
  }

  /** What keeps a kind from standing even alone, and those that it keeps from it. */
  public record Hindered(Kind kind, List<Integer> kinds) {}

  /** What keeps a set from fitting that does not fit. */
  public List<Hindered> hindrances() {
    List<Hindered> all = new ArrayList<>();
    List<Integer> mountless = kinds().filter(kind -> !best.hasMount(kind)).boxed().toList();
    List<Integer> placeless =
        kinds().filter(kind -> best.hasMount(kind) && !best.hasPlace(kind)).boxed().toList();
    if (!mountless.isEmpty()) {
      all.add(new Hindered(Kind.NO_MOUNT, mountless));
    }
    if (!placeless.isEmpty()) {
      all.add(new Hindered(Kind.NO_PLACE, placeless));
    }
    return all.isEmpty() ? List.of(new Hindered(Kind.SIDE_BY_SIDE, List.of())) : all;
  }

  private IntStream kinds() {
    return IntStream.range(0, set.members().size());
  }

  /**
   * A row as it stands.
   *
   * @param fault what the model does not allow of it; empty if nothing
   * @param least the least of its margins and of the gaps of neighbours less the spacing; {@link
   *     RefMargin#NO_LIMIT} if there are none
   * @param gaps from each vise to the next
   * @param handRoom of each vise, whether it has margin ≥ 0 with hand room
   */
  public record Judged(String fault, long least, List<Long> gaps, List<Boolean> handRoom) {}

  /** Looks at every vise in its place and at every two of them. */
  public Judged judge(List<Integer> order, List<RefStand> stands) {
    for (int kind = 0; kind < set.members().size(); kind++) {
      int number = kind;
      if (order.stream().filter(one -> one == number).count() != set.members().get(kind).count()) {
        return fault("not the vises of the set: " + order);
      }
    }
    long least = RefMargin.NO_LIMIT;
    List<Footing> footings = new ArrayList<>();
    List<Boolean> handRoom = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      RefStand stand = stands.get(i);
      Span x = new Span(stand.x(), stand.x());
      Span y = new Span(stand.y(), stand.y());
      Footing footing = worst.footing(order.get(i), stand).orElse(null);
      if (footing == null || footing.region().within(x, y).isEmpty()) {
        return fault("no mount holds " + stand);
      }
      footings.add(footing);
      long margin = margin(footing.model(), footing.region(), stand);
      least = Math.min(least, margin);
      RefModel withHand =
          RefModel.at(RefLevel.WORST, settings, machine, footing.model().vise, false);
      handRoom.add(margin(withHand, footing.region(), stand) >= 0);
    }
    List<Long> gaps = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      for (int j = i + 1; j < stands.size(); j++) {
        long gap =
            RefRow.gap(
                footings.get(i), along(stands.get(i)), footings.get(j), along(stands.get(j)));
        if (gap < settings.spacing()) {
          return fault(i + " is " + gap + " from " + j);
        }
        if (j == i + 1) {
          gaps.add(gap);
          least = Math.min(least, gap - settings.spacing());
        }
      }
    }
    return new Judged(least < 0 ? "margin " + least : "", least, gaps, handRoom);
  }

  private static Judged fault(String fault) {
    return new Judged(fault, 0, List.of(), List.of());
  }

  private long along(RefStand stand) {
    return machine.slots().direction() == Axis.X ? stand.x() : stand.y();
  }

  private static long margin(RefModel model, RefRegion region, RefStand stand) {
    return model.fields(region, model.wholeOpening()).stream()
        .mapToLong(field -> field.margin(stand.x(), stand.y()))
        .min()
        .orElse(RefMargin.NO_LIMIT);
  }
}
