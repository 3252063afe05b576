package org.jawroom.reference.model;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.reference.model.RefGuard.Block;
import org.jawroom.reference.model.RefMachine.Stop;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Rect;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/**
 * The model of one pairing: guards, parts and regions, with open readings at worst or at best. At
 * best, parts, guards and bolts that need a blank column are left out, and mounts with a blank let
 * the vise stand anywhere. {@link #missing} lists the columns of open readings.
 */
public final class RefModel {
  private static final List<Orientation> TURNS =
      List.of(Orientation.FRONT, Orientation.RIGHT, Orientation.REAR, Orientation.LEFT);
  private static final long ANYWHERE = 10_000 * Length.MM;

  /** Beyond all parts and guards, yet not beyond those without end. */
  private static final Span FAR = new Span(-Length.ENDLESS / 8, Length.ENDLESS / 8);

  public final Settings settings;
  public final Machine machine;
  public final Vise vise;
  public final Set<Column> missing = EnumSet.noneOf(Column.class);
  public final List<RefGuard> guards;
  public final List<RefPart> body;
  public final List<RefRegion> regions = new ArrayList<>();
  private final boolean exactly;
  private final RefLevel level;
  private final Optional<RefJob> job;
  private final long riser;
  private final Map<Integer, List<RefPair>> pairsOfMounts = new HashMap<>();
  private final Map<Asked, List<RefPair.Field>> deciding = new HashMap<>();

  private record Asked(Orientation turn, int mount, Span openings) {}

  /**
   * @param exactly whether every tolerance is taken as 0
   */
  public RefModel(Settings settings, Machine machine, Vise vise, boolean exactly) {
    this(settings, machine, vise, exactly, RefLevel.BEST, Optional.empty(), 0, Stop.NONE);
  }

  /** With open readings at worst or at best. */
  public static RefModel at(
      RefLevel level, Settings settings, Machine machine, Vise vise, boolean exactly) {
    return new RefModel(settings, machine, vise, exactly, level, Optional.empty(), 0, Stop.NONE);
  }

  /** The same pairing with other settings, or every tolerance taken as 0. */
  public RefModel with(Settings other, boolean exactlyMade) {
    return at(level, other, machine, vise, exactlyMade);
  }

  /**
   * With a job's workpiece in the jaws, which is then the work area, in the turns that the job
   * allows.
   */
  public RefModel(Settings settings, Machine machine, Vise vise, RefLevel level, RefJob job) {
    this(settings, machine, vise, false, level, Optional.of(job), 0, Stop.NONE);
  }

  /** With a riser plate of that height under the vise. */
  public static RefModel onRiser(Settings settings, Machine machine, Vise vise, long height) {
    return new RefModel(
        settings, machine, vise, false, RefLevel.BEST, Optional.empty(), height, Stop.NONE);
  }

  /** With a stop that shortens the travel while cutting; the reach is not shortened. */
  public static RefModel stopped(Settings settings, Machine machine, Vise vise, Stop stop) {
    return new RefModel(settings, machine, vise, false, RefLevel.BEST, Optional.empty(), 0, stop);
  }

  private RefModel(
      Settings settings,
      Machine machine,
      Vise vise,
      boolean exactly,
      RefLevel level,
      Optional<RefJob> job,
      long riser,
      Stop stop) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.exactly = exactly;
    this.level = level;
    this.job = job;
    this.riser = riser;
    guards =
        RefMachine.guards(settings, machine, vise.base().bedHeight() + riser, stop, level, missing);
    body = RefVise.body(vise, level, missing);
    List<RefMount> mounts = mounts();
    body.replaceAll(part -> part.raised(riser));
    job.ifPresent(held -> body.add(held.box()));
    for (Orientation turn : TURNS) {
      for (RefMount mount : mounts) {
        RefRegion region = region(turn, mount);
        if (!region.isEmpty()) {
          regions.add(region);
        }
      }
    }
  }

  private List<RefMount> mounts() {
    RefSlots slots = new RefSlots(machine);
    List<RefMount> mounts = new ArrayList<>();
    for (Mount mount : vise.mounts()) {
      mounts.add(RefMount.bolts(settings, level, slots, vise, mount, mounts.size(), missing));
    }
    if (vise.simple() && vise.strapFlange()) {
      mounts.add(RefMount.clamps(settings, level, slots, vise, mounts.size(), missing));
    }
    return mounts;
  }

  /** The base, or {@code null} if it is blank or absent. */
  public RefPart base() {
    return body.stream().filter(part -> part.name().equals("base")).findFirst().orElse(null);
  }

  /** Whether the values of a part's open readings share nothing at some end of the opening. */
  public boolean hasPartlyEmptyPart() {
    return body.stream()
        .anyMatch(part -> part.loClosed() > part.hiClosed() || part.loOpen() > part.hiOpen());
  }

  private RefRegion region(Orientation turn, RefMount mount) {
    boolean wanted = job.isEmpty() || job.get().allows(turn);
    if (!wanted || !machine.turns().contains(turn) || !vise.turns().contains(turn)) {
      return mount.nowhere(turn);
    }
    Facing facing = Facing.of(turn);
    Span anywhereX = new Span(-ANYWHERE, ANYWHERE);
    Span anywhereY = anywhereX;
    if (base() != null) {
      // At its largest, if it is open.
      Span rear = RefLevel.values(vise.base().rearReach(), 0);
      Span front = RefLevel.values(vise.base().frontReach(), 0);
      long half = RefLevel.values(vise.base().width(), 0).halves(1).hi();
      Span u = new Span(-rear.hi(), front.hi());
      Span v = new Span(-half, half);
      anywhereX = touching(machine.tableLength(), facing.x(u, v));
      anywhereY = touching(machine.tableWidth(), facing.y(u, v));
    }
    return overhanging(mount.holds(turn, anywhereX, anywhereY).within(FAR, FAR));
  }

  private static Span touching(long table, Span base) {
    return new Span(-table / 2 - base.hi(), table / 2 - base.lo());
  }

  /** The region restricted by max_overhang. */
  public RefRegion overhanging(RefRegion region) {
    RefPart base = base();
    if (base == null || settings.maxOverhang().isEmpty()) {
      return region;
    }
    long most = settings.maxOverhang().getAsLong();
    Facing facing = Facing.of(region.turn());
    Span u = new Span(base.loClosed(), base.hiClosed());
    Span x = facing.x(u, base.v());
    Span y = facing.y(u, base.v());
    long lowX = -machine.tableLength() / 2 - most - x.lo();
    long highX = machine.tableLength() / 2 + most - x.hi();
    long lowY = -machine.tableWidth() / 2 - most - y.lo();
    long highY = machine.tableWidth() / 2 + most - y.hi();
    if (lowX > highX || lowY > highY) {
      return region.mount().nowhere(region.turn());
    }
    return region.within(new Span(lowX, highX), new Span(lowY, highY));
  }

  /** The positions of {@code region} where the vise can be tapped square within its slots. */
  public RefRegion settable(RefRegion region) {
    return region.meet(region.mount().settable(region.turn(), settings.tapRoom()));
  }

  /** Every pair that counts with the bolts or clamps of {@code mount}, in order of precedence. */
  public List<RefPair> pairs(RefMount mount) {
    return pairsOfMounts.computeIfAbsent(mount.index(), index -> pairsWith(mount));
  }

  private List<RefPair> pairsWith(RefMount mount) {
    List<RefPart> parts = new ArrayList<>(body);
    mount.parts().forEach(part -> parts.add(part.raised(riser)));
    List<RefPair> pairs = new ArrayList<>();
    for (RefGuard guard : guards) {
      for (RefPart part : parts) {
        for (boolean cutting : List.of(true, false)) {
          if (counts(guard, part, cutting)) {
            long required = guard.clearance();
            if (part.isHandle() && !cutting) {
              required = Math.max(required, settings.handRoom());
            }
            long tolerance = exactly ? 0 : guard.tolerance() + part.tolerance();
            pairs.add(new RefPair(guard, part, cutting, required, tolerance));
          }
        }
      }
    }
    return pairs;
  }

  private static boolean counts(RefGuard guard, RefPart part, boolean cutting) {
    if (guard.block(cutting) == null || part.w(cutting) == null) {
      return false;
    }
    Block block = guard.block(cutting);
    if (block.z().isEmpty() || part.v().isEmpty() || part.w(cutting).isEmpty()) {
      return false;
    }
    if (block.z().lo() >= Length.ENDLESS / 2 || block.z().hi() <= -Length.ENDLESS / 2) {
      // Only a nose without end is that far off.
      return false;
    }
    if (!guard.isTable()) {
      return true;
    }
    return part.isHandle() ? !cutting : part.w(cutting).lo() < 0;
  }

  /** The u interval that a part sweeps over {@code openings}. */
  public Span u(RefPart part, Span openings) {
    return part.u(openings.lo(), openings.hi(), vise.opening().lo(), vise.opening().hi());
  }

  public Span wholeOpening() {
    return new Span(vise.opening().lo(), vise.opening().hi());
  }

  public List<RefPair.Field> fields(RefRegion region, Span openings) {
    Facing facing = Facing.of(region.turn());
    return pairs(region.mount()).stream()
        .filter(pair -> !u(pair.part(), openings).isEmpty())
        .map(pair -> pair.field(facing, u(pair.part(), openings)))
        .toList();
  }

  /** The non-dominated fields; their minimum is the same. */
  public List<RefPair.Field> deciding(RefRegion region, Span openings) {
    return deciding.computeIfAbsent(
        new Asked(region.turn(), region.mount().index(), openings),
        asked -> RefMargin.undominated(fields(region, openings)));
  }

  /** The open rectangles where the margin is below {@code t}. */
  public List<Rect> forbidden(RefRegion region, Span openings, long t) {
    return deciding(region, openings).stream()
        .map(field -> field.below(t))
        .filter(rect -> rect != null && rect.xLo() < rect.xHi() && rect.yLo() < rect.yHi())
        .toList();
  }

  /** The open rectangles where some pair leaves no room to tap the vise square. */
  public List<Rect> untappable(RefRegion region, Span openings) {
    return deciding(region, openings).stream()
        .map(field -> field.untappable(settings.tapRoom()))
        .filter(rect -> rect != null && rect.xLo() < rect.xHi() && rect.yLo() < rect.yHi())
        .toList();
  }

  /** The work area in the table frame with the vise at the origin: [x, y]. */
  public Span[] workArea(Orientation turn) {
    Facing facing = Facing.of(turn);
    if (job.isPresent()) {
      RefPart box = job.get().box();
      Span across = new Span(box.loClosed(), box.hiClosed());
      return new Span[] {facing.x(across, box.v()), facing.y(across, box.v())};
    }
    long widest = vise.opening().hi();
    Span u = vise.jaws().both() ? new Span(-widest / 2, widest / 2) : new Span(0, widest);
    Span v = new Span(-vise.jaws().width() / 2, vise.jaws().width() / 2);
    return new Span[] {facing.x(u, v), facing.y(u, v)};
  }
}
