package org.jawroom.reference.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Axis;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPair;
import org.jawroom.reference.model.RefPair.Field;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.reference.solve.ReferenceOutcome.Usable;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Ratio;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Standing;

/**
 * A vise where it stands (section 11 of the model). Both measures may be off by the tolerance, so
 * that it stands anywhere in a square; what is said holds wherever in it the vise stands.
 */
public final class RefStanding {
  private final Settings settings;
  private final Standing standing;
  private final RefModel model;
  private final Optional<RefRegion> mounted;
  private final Span xs;
  private final Span ys;

  public RefStanding(Settings settings, Standing standing) {
    this.settings = settings;
    this.standing = standing;
    this.model =
        RefModel.at(
            RefLevel.WORST,
            ReferencePairing.withoutHandRoom(settings),
            standing.machine(),
            standing.vise(),
            false);
    this.mounted =
        model.regions.stream()
            .filter(region -> region.turn() == standing.place().handleTo())
            .filter(region -> region.mount().name().equals(standing.mount()))
            .findFirst();
    this.xs = new Span(standing.x() - off(), standing.x() + off());
    this.ys = new Span(standing.y() - off(), standing.y() + off());
  }

  private long off() {
    return standing.tolerance();
  }

  /** Whether its mount holds somewhere in the square. */
  public boolean isOnSlots() {
    return mounted.filter(region -> !region.within(xs, ys).isEmpty()).isPresent();
  }

  /** How far the nearest place is at which its mount holds, the larger of both ways. */
  public OptionalLong toSlots() {
    return mounted.isEmpty()
        ? OptionalLong.empty()
        : OptionalLong.of(
            Math.max(
                nearest(mounted.get().xs(), standing.x()),
                nearest(mounted.get().ys(), standing.y())));
  }

  private static long nearest(List<Span> spans, long from) {
    return spans.stream().mapToLong(span -> Math.abs(span.clamp(from) - from)).min().orElseThrow();
  }

  /** The pair that limits it, and the axis. */
  public record Limiting(String guard, String part, Axis axis, Situation situation, long margin) {}

  /** What limits it over the full opening; empty if nothing can be hit. */
  public Optional<Limiting> limiting() {
    Facing facing = Facing.of(standing.place().handleTo());
    Limiting least = null;
    for (RefPair pair : model.pairs(mounted.orElseThrow().mount())) {
      Span u = model.u(pair.part(), model.wholeOpening());
      if (u.isEmpty()) {
        continue;
      }
      Field field = pair.field(facing, u);
      long x = least(field.aX(), field.bX(), xs);
      long y = least(field.aY(), field.bY(), ys);
      long margin = Math.max(Math.max(x, y), field.flat());
      if (least == null || margin < least.margin) {
        least =
            new Limiting(
                pair.guard().name(),
                pair.part().name(),
                y == margin ? Axis.Y : x == margin ? Axis.X : Axis.Z,
                pair.cutting() ? Situation.CUTTING : Situation.LOADING,
                margin);
      }
    }
    return Optional.ofNullable(least);
  }

  /** The least of max(a − p, p − b) for p in a span: where a − p = p − b, or at the nearer end. */
  private static long least(long a, long b, Span span) {
    long middle = Math.floorDiv(a + b, 2);
    long low = span.clamp(middle);
    long high = span.clamp(middle + 1);
    return Math.min(Math.max(a - low, low - b), Math.max(a - high, high - b));
  }

  /** Its margin over the full opening. */
  public long margin() {
    return limiting().map(Limiting::margin).orElse(RefMargin.NO_LIMIT);
  }

  /** The widest opening with margin ≥ 0, if it is as wide as the least that counts. */
  public Optional<Usable> usable() {
    RefOpening.Range widest =
        RefOpening.at(model, mounted.orElseThrow(), standing.x(), standing.y(), off()).widest();
    return Optional.ofNullable(widest)
        .filter(range -> range.width().compareTo(Ratio.of(settings.leastOpening())) >= 0)
        .map(range -> ReferencePairing.usable(model, range));
  }

  /** The largest shortfall: at a corner of the square, since it grows outward. */
  public long shortfall() {
    RefReach reach = new RefReach(model);
    long most = 0;
    for (long x : List.of(xs.lo(), xs.hi())) {
      for (long y : List.of(ys.lo(), ys.hi())) {
        most = Math.max(most, reach.shortfall(standing.place().handleTo(), x, y));
      }
    }
    return most;
  }

  /** The place to which it would have to move; empty without a clear one, or if it stands there. */
  public Optional<Place> target() {
    return ReferencePairing.solve(settings, standing.machine(), standing.vise())
        .recommended()
        .filter(place -> place.margin().orElse(0) >= 0)
        .filter(
            place ->
                place.turn() != standing.place().handleTo()
                    || Math.abs(place.x() - standing.x()) > off()
                    || Math.abs(place.y() - standing.y()) > off());
  }

  /** A box that a part sweeps. */
  private record Swept(boolean isHandle, Span x, Span y, Span z) {}

  /** Both situations over the full opening, the place anywhere in the square. */
  private List<Swept> swept() {
    Facing facing = Facing.of(standing.place().handleTo());
    List<RefPart> parts = new ArrayList<>(model.body);
    mounted.ifPresent(region -> parts.addAll(region.mount().parts()));
    List<Swept> swept = new ArrayList<>();
    for (RefPart part : parts) {
      Span u = model.u(part, model.wholeOpening());
      for (boolean cutting : List.of(true, false)) {
        if (part.w(cutting) != null) {
          swept.add(
              new Swept(
                  part.isHandle(),
                  facing.x(u, part.v()).plus(xs),
                  facing.y(u, part.v()).plus(ys),
                  part.w(cutting)));
        }
      }
    }
    return swept;
  }

  /** The least gap to another vise on its table; two handles apart. */
  public long gapTo(RefStanding other) {
    long least = Long.MAX_VALUE;
    for (Swept mine : swept()) {
      for (Swept its : other.swept()) {
        if (!mine.isHandle || !its.isHandle) {
          long beside = Math.max(mine.x.gap(its.x), mine.y.gap(its.y));
          long above = mine.z.gap(its.z);
          least = Math.min(least, above < 0 ? beside : Math.max(beside, above));
        }
      }
    }
    return least;
  }
}
