package org.jawroom.reference.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.FreeCells;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * Counts the vises of one kind on one table per combination of slots: the positions along the slots
 * by plane decomposition ({@link FreeCells}), then the longest row by dynamic programming over
 * every position that a left-packed row can have.
 */
public final class RefCounts {
  private final ReferenceOutcome outcome;
  private final RefModel model;
  private final boolean alongX;

  /** Of a pairing without blanks that fits or is awkward. */
  public RefCounts(Settings settings, Machine machine, Vise vise) {
    this.outcome = ReferencePairing.solve(settings, machine, vise);
    boolean fits = outcome.verdict() == Verdict.FITS;
    this.model =
        new RefModel(
            fits ? settings : ReferencePairing.withoutHandRoom(settings), machine, vise, false);
    this.alongX = machine.slots().direction() == Axis.X;
  }

  /** The largest number over all turns, mounts and slots. */
  public int most() {
    int most = 0;
    for (RefRegion region : model.regions) {
      long apart = apart(region);
      for (List<Span> free : rows(region)) {
        most = Math.max(most, longest(free, apart));
      }
    }
    return most;
  }

  /**
   * Whether vises at {@code positions} along the slots, in that turn and mount, are clear on some
   * slots and far enough apart.
   */
  public boolean stand(Orientation turn, String mount, List<Long> positions) {
    for (RefRegion region : model.regions) {
      if (region.turn() == turn && region.mount().name().equals(mount)) {
        long apart = apart(region);
        for (List<Span> free : rows(region)) {
          boolean stand = true;
          for (int i = 0; i < positions.size(); i++) {
            long at = positions.get(i);
            stand &= free.stream().anyMatch(span -> span.lo() <= at && at <= span.hi());
            stand &= i == 0 || at - positions.get(i - 1) >= apart;
          }
          if (stand) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** For each choice of slots, the positions along them. */
  private List<List<Span>> rows(RefRegion region) {
    List<Rect> forbidden = model.forbidden(region, model.wholeOpening(), 0);
    RefRegion near =
        new RefReach(model).within(region, outcome.recommended().get().reachShortfall());
    List<List<Span>> rows = new ArrayList<>();
    for (Span slots : region.mount().choices(region.turn())) {
      RefRegion held = alongX ? near.within(Span.ALL, slots) : near.within(slots, Span.ALL);
      List<Span> free = new ArrayList<>();
      for (Rect cell : FreeCells.of(held.xs(), held.ys(), forbidden)) {
        free.add(alongX ? new Span(cell.xLo(), cell.xHi()) : new Span(cell.yLo(), cell.yHi()));
      }
      rows.add(RefRegion.merged(free));
    }
    return rows;
  }

  /** The least distance between the origins of two neighbours. */
  private long apart(RefRegion region) {
    List<RefPart> parts = new ArrayList<>(model.body);
    parts.addAll(region.mount().parts());
    long apart = 0;
    for (RefPart left : parts) {
      for (RefPart right : parts) {
        if (!left.isHandle() || !right.isHandle()) {
          long reach = along(region.turn(), left).hi() - along(region.turn(), right).lo();
          apart = Math.max(apart, reach + model.settings.spacing());
        }
      }
    }
    return apart;
  }

  private Span along(Orientation turn, RefPart part) {
    Facing facing = Facing.of(turn);
    Span u = model.u(part, model.wholeOpening());
    return alongX ? facing.x(u, part.v()) : facing.y(u, part.v());
  }

  private static int longest(List<Span> free, long apart) {
    if (apart <= 0) {
      throw new IllegalArgumentException("vises of no width: " + apart);
    }
    TreeSet<Long> places = new TreeSet<>();
    if (free.isEmpty()) {
      return 0;
    }
    for (Span start : free) {
      for (long at = start.lo(); at <= free.get(free.size() - 1).hi(); at += apart) {
        long here = at;
        if (free.stream().anyMatch(span -> span.lo() <= here && here <= span.hi())) {
          places.add(at);
        }
      }
    }
    TreeMap<Long, Integer> longest = new TreeMap<>();
    int most = 0;
    for (long at : places) {
      var before = longest.floorEntry(at - apart);
      most = Math.max(most, 1 + (before == null ? 0 : before.getValue()));
      longest.put(at, most);
    }
    return most;
  }
}
