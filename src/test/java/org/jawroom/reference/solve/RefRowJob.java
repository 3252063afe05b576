package org.jawroom.reference.solve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.reference.model.RefJob;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.model.RefRegion;
import org.jawroom.reference.space.Facing;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * Whether a vise of a row holds a job, part by part: the box of the work in its place against every
 * box of every other vise, and every guard against every part.
 *
 * @param vises from left to right
 * @param stands where they stand
 */
public record RefRowJob(
    Settings settings, Machine machine, List<Vise> vises, List<RefStand> stands) {

  public RefRowJob {
    settings = ReferencePairing.withoutHandRoom(settings);
  }

  /** Whether no vise is taller than another by more than the shortest tool is long. */
  public boolean isComparable() {
    long tallest = vises.stream().mapToLong(vise -> vise.base().bedHeight()).max().orElseThrow();
    long lowest = vises.stream().mapToLong(vise -> vise.base().bedHeight()).min().orElseThrow();
    return tallest - lowest <= settings.shortestTool().orElse(Length.ENDLESS);
  }

  public boolean isHeld(int at, Job job) {
    return isHeldUnderAnyHead(at, job) && headsStayClear(at);
  }

  private boolean isHeldUnderAnyHead(int at, Job job) {
    Vise vise = vises.get(at);
    RefStand stand = stands.get(at);
    RefJob work = new RefJob(vise, job);
    if (!ReferenceJob.failsAnywhere(settings, machine, heavy(at, job), job).isEmpty()
        || !work.allows(stand.turn())) {
      return false;
    }
    RefModel model = new RefModel(settings, machine, vise, RefLevel.WORST, work);
    long more = Math.max(settings.jawPlay(), settings.loadRoom());
    Span openings = new Span(job.width(), Math.min(job.width() + more, vise.opening().hi()));
    return margin(model, stand, openings) >= 0
        && new RefReach(model).shortfall(stand.turn(), stand.x(), stand.y()) == 0
        && leastGap(at, work) >= settings.spacing();
  }

  /** The vise with the mass of all of them; blank if one is. */
  private Vise heavy(int at, Job job) {
    Optional<BigDecimal> all = Optional.of(BigDecimal.ZERO);
    for (Vise vise : vises) {
      all = all.flatMap(sum -> vise.mass().map(sum::add));
    }
    BigDecimal known =
        vises.stream().flatMap(one -> one.mass().stream()).reduce(BigDecimal.ZERO, BigDecimal::add);
    // A blank among them leaves the load open, unless what is known is too heavy.
    BigDecimal least = known.add(job.mass().orElse(BigDecimal.ZERO));
    boolean isTooHeavy = machine.maxLoad().filter(most -> least.compareTo(most) > 0).isPresent();
    return vises.get(at).toBuilder().mass(isTooHeavy ? Optional.of(known) : all).build();
  }

  public RefRowJob withSpacing(long spacing) {
    return new RefRowJob(settings.toBuilder().spacing(spacing).build(), machine, vises, stands);
  }

  public RefRowJob withoutMasses() {
    List<Vise> light =
        vises.stream().map(vise -> vise.toBuilder().mass(Optional.empty()).build()).toList();
    return new RefRowJob(settings, machine, light, stands);
  }

  /** Whether only a head over a taller neighbour keeps the job from being held. */
  public boolean isHeldButForHeads(int at, Job job) {
    return isHeldUnderAnyHead(at, job) && !headsStayClear(at);
  }

  private static long margin(RefModel model, RefStand stand, Span openings) {
    return region(model, stand)
        .map(
            region ->
                model.fields(region, openings).stream()
                    .mapToLong(field -> field.margin(stand.x(), stand.y()))
                    .min()
                    .orElse(RefMargin.NO_LIMIT))
        .orElse(-1L);
  }

  private static Optional<RefRegion> region(RefModel model, RefStand stand) {
    return model.regions.stream()
        .filter(region -> region.turn() == stand.turn())
        .filter(region -> region.mount().name().equals(stand.mount()))
        .findFirst();
  }

  /** From the work to the parts of every other vise, along the slots. */
  public long leastGap(int at, RefJob work) {
    RefStand own = stands.get(at);
    RefPart box = work.box();
    Span part = along(own, new Span(box.loClosed(), box.hiClosed()), box.v());
    long least = Length.ENDLESS;
    for (int other : others(at)) {
      for (Span swept : swept(other)) {
        least = Math.min(least, other < at ? part.lo() - swept.hi() : swept.lo() - part.hi());
      }
    }
    return least;
  }

  private List<Integer> others(int at) {
    return IntStream.range(0, vises.size()).filter(other -> other != at).boxed().toList();
  }

  /** What each part of a vise sweeps along the slots over its whole opening. */
  private List<Span> swept(int at) {
    RefStand stand = stands.get(at);
    RefModel model = RefModel.at(RefLevel.WORST, settings, machine, vises.get(at), false);
    List<RefPart> parts = new ArrayList<>(model.body);
    parts.addAll(region(model, stand).orElseThrow().mount().parts());
    return parts.stream()
        .map(part -> along(stand, model.u(part, model.wholeOpening()), part.v()))
        .toList();
  }

  private Span along(RefStand stand, Span u, Span v) {
    Facing facing = Facing.of(stand.turn());
    return machine.slots().direction() == Axis.X
        ? facing.x(u, v).shifted(stand.x())
        : facing.y(u, v).shifted(stand.y());
  }

  /**
   * A head that comes down to the shortest tool over this vise comes lower over a taller one than
   * over that alone, as if the tool were shorter by the difference.
   */
  private boolean headsStayClear(int at) {
    if (settings.shortestTool().isEmpty()) {
      return true;
    }
    for (int other : others(at)) {
      long taller = vises.get(other).base().bedHeight() - vises.get(at).base().bedHeight();
      if (taller > 0) {
        long tool = settings.shortestTool().getAsLong() - taller;
        Settings lower = settings.toBuilder().shortestTool(OptionalLong.of(tool)).build();
        RefModel model = RefModel.at(RefLevel.WORST, lower, machine, vises.get(other), false);
        if (margin(model, stands.get(other), model.wholeOpening()) < 0) {
          return false;
        }
      }
    }
    return true;
  }
}
