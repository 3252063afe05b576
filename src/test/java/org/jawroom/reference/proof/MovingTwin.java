package org.jawroom.reference.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.vise.Vise;

/**
 * Simulates all motion: steps table, spindle, nose and jaws through their full ranges and at each
 * step compares every part with every guard where they stand, in the machine frame. It does not
 * sweep, because sweeping is what it verifies.
 *
 * <p>Steps are no longer than part and guard together, so no contact is skipped, and the ends of
 * every motion are included. For a placement with margin ≥ 0 the least margin found therefore
 * equals the claimed one exactly.
 */
public final class MovingTwin {
  private static final int MOST_STEPS = 400;

  /**
   * The least margin found, and where.
   *
   * @param margin {@link Long#MAX_VALUE} if nothing can be hit
   */
  public record Found(long margin, String where) {}

  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Facing facing;
  private final long x;
  private final long y;
  private final Span openings;
  private final List<RefPart> parts;
  private Found least = new Found(Long.MAX_VALUE, "nowhere");

  private MovingTwin(
      Settings settings,
      Machine machine,
      Vise vise,
      Orientation turn,
      String mount,
      long x,
      long y,
      Span openings) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.facing = Facing.of(turn);
    this.x = x;
    this.y = y;
    this.openings = openings;
    RefModel model = new RefModel(settings, machine, vise, false);
    parts = new ArrayList<>(model.body);
    model.regions.stream()
        .map(RefRegion::mount)
        .filter(m -> m.name().equals(mount))
        .findFirst()
        .ifPresent(m -> parts.addAll(m.parts()));
  }

  /** The least margin at a placement without blanks, while cutting and while loading. */
  public static Found watch(
      Settings settings,
      Machine machine,
      Vise vise,
      Orientation turn,
      String mount,
      long x,
      long y,
      Span openings) {
    MovingTwin twin = new MovingTwin(settings, machine, vise, turn, mount, x, y, openings);
    twin.cut(false, 0, 0);
    twin.load();
    return twin.least;
  }

  /**
   * The least margin while cutting between the parts and the guards that move along z and have a z
   * limit, with the nose anywhere from {@code low} to {@code high}.
   */
  public static Found watchNose(
      Settings settings,
      Machine machine,
      Vise vise,
      Orientation turn,
      String mount,
      long x,
      long y,
      Span openings,
      long low,
      long high) {
    MovingTwin twin = new MovingTwin(settings, machine, vise, turn, mount, x, y, openings);
    twin.cut(true, low, high);
    return twin.least;
  }

  /** An object in the machine frame, given per axis. */
  private record Thing(Span[] at, boolean[] carried, boolean fromNose) {}

  private void cut(boolean onlyRisers, long low, long high) {
    if (!onlyRisers) {
      gapGuards(true);
      table(true);
    }
    for (Guard guard : machine.guardRows()) {
      boolean riser = rises(guard) && limitedInZ(guard);
      if (!guard.when().countsWhileCutting() || onlyRisers && !riser) {
        continue;
      }
      if (onlyRisers) {
        against(guard.name(), thing(guard), clearance(guard), tolerance(guard), true, low, high);
      } else if (!riser) {
        against(guard.name(), thing(guard), clearance(guard), tolerance(guard), true, 0, 0);
      } else if (settings.shortestTool().isPresent()) {
        long top = machine.noseMax().length();
        long tool = vise.base().bedHeight() + settings.shortestTool().getAsLong();
        long from = Math.min(top, Math.max(tool, machine.noseMin().length()));
        against(guard.name(), thing(guard), clearance(guard), tolerance(guard), true, from, top);
      }
    }
  }

  private void load() {
    gapGuards(false);
    table(false);
    for (Guard guard : machine.guardRows()) {
      if (guard.when().countsWhileLoading()) {
        long nose = machine.noseMax().isKnown() ? machine.noseMax().length() : 0;
        against(guard.name(), thing(guard), clearance(guard), tolerance(guard), false, nose, nose);
      }
    }
  }

  private long clearance(Guard guard) {
    return guard.clearance().orElse(settings.clearance());
  }

  private long tolerance(Guard guard) {
    return guard.tolerance().orElse(machine.provenance().tolerance());
  }

  private boolean rises(Guard guard) {
    return guard.carriedBy().z() != machine.tableMoves().z();
  }

  private static boolean limitedInZ(Guard guard) {
    return Length.isBounded(guard.limits().z().lo()) || Length.isBounded(guard.limits().z().hi());
  }

  /**
   * Position in the machine of the table and whatever moves with it, with the spindle {@code off}
   * its mid-travel.
   */
  private long tableAt(Axis axis, long off) {
    return machine.tableMoves().has(axis) ? -off : 0;
  }

  private long thingAt(Thing thing, Axis axis, long off) {
    if (!thing.carried[axis.ordinal()]) {
      return 0;
    }
    return machine.tableMoves().has(axis) ? -off : off;
  }

  private Thing thing(Guard guard) {
    boolean[] carried = {guard.carriedBy().x(), guard.carriedBy().y(), guard.carriedBy().z()};
    Span[] at = {
      new Span(guard.limits().x().lo(), guard.limits().x().hi()),
      new Span(guard.limits().y().lo(), guard.limits().y().hi()),
      new Span(guard.limits().z().lo(), guard.limits().z().hi())
    };
    Thing thing = new Thing(at, carried, rises(guard));
    guard
        .side()
        .ifPresent(
            side -> {
              boolean alongY = side.word().equals("front") || side.word().equals("rear");
              boolean low = side.word().equals("front") || side.word().equals("left");
              Axis axis = alongY ? Axis.Y : Axis.X;
              at[axis.ordinal()] = beyond(thing, axis, low, guard.gap().length());
            });
    return thing;
  }

  /**
   * Fills everything beyond a face that comes to within {@code gap} of the table's edge, no nearer.
   */
  private Span beyond(Thing thing, Axis axis, boolean low, long gap) {
    long half = (axis == Axis.X ? machine.travelX() : machine.travelY()) / 2;
    long edge = (axis == Axis.X ? machine.tableLength() : machine.tableWidth()) / 2;
    long face = Long.MAX_VALUE;
    for (long off : new long[] {-half, half}) {
      long table = tableAt(axis, off);
      long shift = thingAt(thing, axis, off);
      // Places the face {@code gap} off at this end. The less outward of the two candidates would
      // come nearer than taped at the other end, so the outer one is used.
      long here = low ? (table - edge - gap) - shift : shift - (table + edge + gap);
      face = Math.min(face, here);
    }
    return low ? new Span(-Length.ENDLESS, face) : new Span(-face, Length.ENDLESS);
  }

  private void gapGuards(boolean cutting) {
    long clearance = settings.clearance();
    long tolerance = machine.provenance().tolerance();
    String[] names = {"door", "rear cover", "left guard", "right guard"};
    for (int i = cutting ? 0 : 1; i < 4; i++) {
      var gap =
          List.of(
                  machine.gap(Side.FRONT),
                  machine.gap(Side.REAR),
                  machine.gap(Side.LEFT),
                  machine.gap(Side.RIGHT))
              .get(i);
      if (gap.isKnown()) {
        Span[] at = {Span.ALL, Span.ALL, Span.ALL};
        Thing thing = new Thing(at, new boolean[3], false);
        Axis axis = i < 2 ? Axis.Y : Axis.X;
        at[axis.ordinal()] = beyond(thing, axis, i % 2 == 0, gap.length());
        against(names[i], thing, clearance, tolerance, cutting, 0, 0);
      }
    }
  }

  private void table(boolean cutting) {
    long halfX = machine.tableLength() / 2;
    long halfY = machine.tableWidth() / 2;
    var ledges = machine.ledges();
    Span[] at = {
      new Span(-halfX - ledges.left(), halfX + ledges.right()),
      new Span(-halfY - ledges.front(), halfY + ledges.rear()),
      new Span(-Length.ENDLESS, 0)
    };
    var moves = machine.tableMoves();
    Thing table = new Thing(at, new boolean[] {moves.x(), moves.y(), moves.z()}, false);
    long tolerance = machine.provenance().tolerance();
    against("table", table, settings.clearance(), tolerance, cutting, 0, 0);
  }

  private void against(
      String name,
      Thing thing,
      long clearance,
      long tolerance,
      boolean cutting,
      long noseLow,
      long noseHigh) {
    for (RefPart part : parts) {
      if (part.w(cutting) == null) {
        continue;
      }
      boolean handle = part.isHandle();
      if (name.equals("table") && (handle ? cutting : part.w(cutting).lo() >= 0)) {
        continue;
      }
      long required = handle && !cutting ? Math.max(clearance, settings.handRoom()) : clearance;
      long need = required + tolerance + part.tolerance();
      step(name, thing, part, need, cutting, noseLow, noseHigh);
    }
  }

  private void step(
      String name,
      Thing thing,
      RefPart part,
      long need,
      boolean cutting,
      long noseLow,
      long noseHigh) {
    Span w = part.w(cutting);
    long min = vise.opening().lo();
    long max = vise.opening().hi();
    boolean still = part.loClosed() == part.loOpen() && part.hiClosed() == part.hiOpen();
    Span u = part.u(openings.lo(), openings.hi(), min, max);
    List<Long> openingSteps =
        still
            ? List.of(openings.lo())
            : steps(openings, part.hi(min, min, max) - part.lo(min, min, max));
    for (long s : openingSteps) {
      Span us = part.u(s, s, min, max);
      Span px = facing.x(us, part.v()).shifted(x);
      Span py = facing.y(us, part.v()).shifted(y);
      for (long offX : offsets(Axis.X, thing, cutting, size(facing.x(u, part.v())))) {
        long gapX =
            px.shifted(tableAt(Axis.X, offX))
                .gap(thing.at[0].shifted(thingAt(thing, Axis.X, offX)));
        for (long offY : offsets(Axis.Y, thing, cutting, size(facing.y(u, part.v())))) {
          long gapY =
              py.shifted(tableAt(Axis.Y, offY))
                  .gap(thing.at[1].shifted(thingAt(thing, Axis.Y, offY)));
          for (long nose : steps(new Span(noseLow, noseHigh), size(w) + size(thing.at[2]))) {
            long gapZ = w.gap(thing.at[2].shifted(thing.fromNose ? nose : 0));
            long margin = Math.max(Math.max(gapX, gapY), gapZ) - need;
            if (margin < least.margin) {
              least =
                  new Found(
                      margin,
                      String.format(
                          "%s, %s, opening %d, spindle %d %d off, nose %d",
                          name, part.name(), s, offX, offY, nose));
            }
          }
        }
      }
    }
  }

  private static long size(Span span) {
    return Math.min(span.hi() - span.lo(), 1000 * Length.MM);
  }

  /** The spindle offsets from mid-travel to try for two objects that move against each other. */
  private List<Long> offsets(Axis axis, Thing thing, boolean cutting, long partSize) {
    if (!cutting) {
      return List.of(
          axis == Axis.X
              ? machine.loadX() - machine.spindleX()
              : machine.loadY() - machine.spindleY());
    }
    if (tableAt(axis, 1) == thingAt(thing, axis, 1)) {
      return List.of(0L);
    }
    long half = (axis == Axis.X ? machine.travelX() : machine.travelY()) / 2;
    return steps(new Span(-half, half), partSize + size(thing.at[axis.ordinal()]));
  }

  /**
   * Both ends and evenly spaced positions between, no step longer than {@code longest} (at least
   * half a millimetre).
   */
  private static List<Long> steps(Span range, long longest) {
    long length = range.hi() - range.lo();
    long count = 1 + length / Math.max(longest, Length.MM / 2);
    count = Math.min(count, MOST_STEPS);
    TreeSet<Long> steps = new TreeSet<>();
    for (long i = 0; i <= count; i++) {
      steps.add(range.lo() + length / count * i);
    }
    steps.add(range.hi());
    return List.copyOf(steps);
  }
}
