package org.jawroom.reference.solve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import org.jawroom.geometry.Length;
import org.jawroom.reference.model.RefJob;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/** The reference solution of a job on a pairing. */
public final class ReferenceJob {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Job job;
  private final RefJob part;
  private final RefLevel level;
  private final RefModel model;
  private final List<String> fails = new ArrayList<>();
  private final Collection<Column> missing = new TreeSet<>();
  private final List<String> unchecked = new ArrayList<>();
  private boolean nowhereToLook;

  private ReferenceJob(Settings settings, Machine machine, Vise vise, Job job, RefLevel level) {
    this.level = level;
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.job = job;
    this.part = new RefJob(vise, job);
    this.model =
        new RefModel(ReferencePairing.withoutHandRoom(settings), machine, vise, level, part);
    missing.addAll(model.missing);
  }

  /**
   * The reference's result for a job.
   *
   * @param fails {@code reason amount}, the amount in half-nanometres or kg, in the order of the
   *     specification
   * @param place with its margin; an unknown has {@code missing} only
   * @param toolRoom from the tip of the longest tool to the workpiece, {@code loadRoom} kg left
   * @param unchecked what a blank leaves unchecked: {@code tool}, {@code load}
   */
  public record Answer(
      String verdict,
      List<String> fails,
      Optional<Place> place,
      OptionalLong toolRoom,
      Optional<BigDecimal> loadRoom,
      OptionalLong stickOut,
      List<Column> missing,
      List<String> unchecked) {}

  /** Solves a job as the specification defines it. */
  public static Answer solve(Settings settings, Machine machine, Vise vise, Job job) {
    ReferenceJob worst = new ReferenceJob(settings, machine, vise, job, RefLevel.WORST);
    Answer answer = worst.answer();
    return answer.verdict().equals("held") || worst.missing.isEmpty()
        ? answer
        : new ReferenceJob(settings, machine, vise, job, RefLevel.BEST).answer();
  }

  /** What fails wherever the vise stands, open readings at worst. */
  static List<String> failsAnywhere(Settings settings, Machine machine, Vise vise, Job job) {
    ReferenceJob worst = new ReferenceJob(settings, machine, vise, job, RefLevel.WORST);
    worst.withoutAPlace();
    worst.tools();
    worst.load();
    return worst.fails;
  }

  private Answer answer() {
    withoutAPlace();
    Optional<Place> place = nowhereToLook ? Optional.empty() : place();
    OptionalLong toolRoom = tools();
    Optional<BigDecimal> loadRoom = load();
    if (fails.isEmpty() && level == RefLevel.BEST) {
      return new Answer(
          "unknown",
          fails,
          Optional.empty(),
          OptionalLong.empty(),
          Optional.empty(),
          OptionalLong.empty(),
          List.copyOf(missing),
          List.of());
    }
    OptionalLong stickOut = OptionalLong.empty();
    if (place.isPresent() && place.get().noseNotBelow().isPresent()) {
      stickOut = OptionalLong.of(Math.max(0, place.get().noseNotBelow().getAsLong() - part.top()));
    }
    return new Answer(
        fails.isEmpty() ? "held" : "not held",
        fails,
        place,
        toolRoom,
        loadRoom,
        stickOut,
        List.of(),
        unchecked);
  }

  private void withoutAPlace() {
    if (!job.machines().isEmpty() && job.machines().stream().noneMatch(machine.name()::equals)) {
      fails.add("machine");
    }
    long wanted = job.width() + settings.loadRoom();
    if (wanted > vise.opening().hi()) {
      fails.add("too wide " + (wanted - vise.opening().hi()));
    }
    if (job.width() < vise.opening().lo()) {
      fails.add("too narrow " + (vise.opening().lo() - job.width()));
    }
    if (job.grip().isPresent() && job.grip().getAsLong() > part.jawHeight()) {
      fails.add("grip " + (job.grip().getAsLong() - part.jawHeight()));
    }
    if (RefModel.at(level, settings, machine, vise, false).regions.isEmpty()) {
      fails.add("mount");
    } else if (model.regions.isEmpty()) {
      fails.add("turn");
    }
    nowhereToLook = !fails.isEmpty();
  }

  private Optional<Place> place() {
    long play = Math.max(settings.jawPlay(), settings.loadRoom());
    long most = Math.min(job.width() + play, vise.opening().hi());
    Span openings = new Span(job.width(), most);
    RefChoice choice = new RefChoice(model, openings);
    boolean clear = choice.somewhereClear();
    if (level == RefLevel.BEST || !clear && !model.missing.isEmpty()) {
      if (!clear) {
        fails.add("hit");
      } else if (choice.leastShortfallOfClear() > 0) {
        fails.add("reach");
      }
      return Optional.empty();
    }
    Place place = new RefDetails(model, openings, choice.recommendedInReach()).place();
    if (!clear) {
      fails.add("hit " + -place.margin().orElseThrow());
    } else if (choice.leastShortfallOfClear() > 0) {
      fails.add("reach " + choice.leastShortfallOfClear());
    }
    return Optional.of(place);
  }

  private OptionalLong tools() {
    boolean longest = !machine.noseMax().isBlank() && !job.toolLength().isBlank();
    boolean shortest = settings.shortestTool().isEmpty() || !machine.noseMin().isBlank();
    if (!longest || !shortest) {
      unchecked.add("tool");
    }
    OptionalLong room = OptionalLong.empty();
    if (longest) {
      ask(machine.noseMax(), Column.NOSE_MAX);
      ask(job.toolLength(), Column.TOOL_LENGTH);
      Span tool = RefLevel.values(job.toolLength(), 0);
      Span nose = RefLevel.values(machine.noseMax(), 0);
      long tip = least(nose.plus(tool.negated()));
      room = OptionalLong.of(tip - part.top());
      if (tip < part.top() + settings.clearance()) {
        fails.add("long tool " + (part.top() + settings.clearance() - tip));
      }
    }
    if (settings.shortestTool().isPresent() && shortest) {
      ask(machine.noseMin(), Column.NOSE_MIN);
      Span nose = RefLevel.values(machine.noseMin(), 0).negated();
      long tip = -least(nose) - settings.shortestTool().getAsLong();
      if (tip > part.top()) {
        fails.add("short tool " + (tip - part.top()));
      }
    }
    return room;
  }

  /** The end that leaves less at worst, the other at best. */
  private long least(Span values) {
    return level == RefLevel.WORST ? values.lo() : values.hi();
  }

  private void ask(Dimension reading, Column column) {
    if (reading.isOpen()) {
      missing.add(column);
    }
  }

  private Optional<BigDecimal> load() {
    if (machine.maxLoad().isEmpty()) {
      unchecked.add("load");
      return Optional.empty();
    }
    BigDecimal most = machine.maxLoad().get();
    BigDecimal known = vise.mass().orElse(BigDecimal.ZERO).add(job.mass().orElse(BigDecimal.ZERO));
    if (known.compareTo(most) > 0) {
      fails.add("load " + known.subtract(most));
    }
    BigDecimal left = most.subtract(known);
    if (job.mass().isEmpty()) {
      left = left.subtract(steel());
    }
    if (vise.mass().isEmpty() || job.mass().isEmpty() && left.signum() < 0) {
      unchecked.add("load");
      return Optional.empty();
    }
    return Optional.of(left);
  }

  /** The mass of a solid block of steel of the part's size: 8 kg/dm³. */
  private BigDecimal steel() {
    BigDecimal kilograms = BigDecimal.valueOf(8);
    for (long side : new long[] {job.length(), job.width(), job.height()}) {
      kilograms =
          kilograms.multiply(BigDecimal.valueOf(side)).divide(BigDecimal.valueOf(100 * Length.MM));
    }
    return kilograms;
  }
}
