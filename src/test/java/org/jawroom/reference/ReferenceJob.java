package org.jawroom.reference;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import org.jawroom.reference.ReferenceOutcome.Place;
import org.jawroom.shop.Column;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Job;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Vise;

/** The reference solution of a job on a pairing. */
public final class ReferenceJob {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final Job job;
  private final RefJob part;
  private final RefModel model;
  private final List<String> fails = new ArrayList<>();
  private final Collection<Column> missing = new TreeSet<>();
  private boolean nowhereToLook;

  private ReferenceJob(Settings settings, Machine machine, Vise vise, Job job) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.job = job;
    this.part = new RefJob(vise, job);
    this.model = new RefModel(settings, machine, vise, part);
    missing.addAll(model.missing);
  }

  /**
   * The reference's result for a job.
   *
   * @param fails {@code reason amount}, the amount in half-nanometres or kg, in the order of the
   *     specification
   * @param place with its margin; an unknown has {@code missing} only
   * @param toolRoom from the tip of the longest tool to the workpiece, {@code loadRoom} kg left
   */
  public record Answer(
      String verdict,
      List<String> fails,
      Optional<Place> place,
      OptionalLong toolRoom,
      Optional<BigDecimal> loadRoom,
      OptionalLong stickOut,
      List<Column> missing) {}

  /** Solves a job as the specification defines it. */
  public static Answer solve(Settings settings, Machine machine, Vise vise, Job job) {
    return new ReferenceJob(settings, machine, vise, job).answer();
  }

  private Answer answer() {
    withoutAPlace();
    Optional<Place> place = nowhereToLook ? Optional.empty() : place();
    OptionalLong toolRoom = tools();
    Optional<BigDecimal> loadRoom = load();
    if (fails.isEmpty() && !missing.isEmpty()) {
      return new Answer(
          "unknown",
          fails,
          Optional.empty(),
          OptionalLong.empty(),
          Optional.empty(),
          OptionalLong.empty(),
          List.copyOf(missing));
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
        List.of());
  }

  private void withoutAPlace() {
    if (!job.machines().isEmpty() && job.machines().stream().noneMatch(machine.name()::equals)) {
      fails.add("machine");
    }
    if (job.width() > vise.opening().hi()) {
      fails.add("too wide " + (job.width() - vise.opening().hi()));
    }
    if (job.width() < vise.opening().lo()) {
      fails.add("too narrow " + (vise.opening().lo() - job.width()));
    }
    if (job.grip().isPresent() && job.grip().getAsLong() > part.jawHeight()) {
      fails.add("grip " + (job.grip().getAsLong() - part.jawHeight()));
    }
    if (new RefModel(settings, machine, vise, false).regions.isEmpty()) {
      fails.add("mount");
    } else if (model.regions.isEmpty()) {
      fails.add("turn");
    }
    nowhereToLook = !fails.isEmpty();
  }

  private Optional<Place> place() {
    long most = Math.min(job.width() + settings.jawPlay(), vise.opening().hi());
    Span openings = new Span(job.width(), most);
    RefChoice choice = new RefChoice(model, openings);
    boolean clear = choice.somewhereClear();
    if (!model.missing.isEmpty()) {
      if (!clear) {
        fails.add("hit");
      } else if (choice.leastShortfallOfClear() > 0) {
        fails.add("reach");
      }
      return Optional.empty();
    }
    Place place = new RefDetails(model, openings, choice.recommended()).place();
    if (!clear) {
      fails.add("hit " + -place.margin().orElseThrow());
    } else if (choice.leastShortfallOfClear() > 0) {
      fails.add("reach " + choice.leastShortfallOfClear());
    }
    return Optional.of(place);
  }

  private OptionalLong tools() {
    OptionalLong room = OptionalLong.empty();
    if (all(
        blank(machine.noseMax(), Column.NOSE_MAX), blank(job.toolLength(), Column.TOOL_LENGTH))) {
      long tip = machine.noseMax().length() - job.toolLength().length();
      room = OptionalLong.of(tip - part.top());
      if (tip < part.top() + settings.clearance()) {
        fails.add("long tool " + (part.top() + settings.clearance() - tip));
      }
    }
    if (settings.shortestTool().isPresent() && all(blank(machine.noseMin(), Column.NOSE_MIN))) {
      long tip = machine.noseMin().length() - settings.shortestTool().getAsLong();
      if (tip > part.top()) {
        fails.add("short tool " + (tip - part.top()));
      }
    }
    return room;
  }

  private Optional<BigDecimal> load() {
    boolean known =
        all(
            machine.maxLoad().isEmpty() && missing.add(Column.MAX_LOAD),
            vise.mass().isEmpty() && missing.add(Column.VISE_MASS),
            job.mass().isEmpty() && missing.add(Column.JOB_MASS));
    if (!known) {
      return Optional.empty();
    }
    BigDecimal weighs = vise.mass().get().add(job.mass().get());
    if (weighs.compareTo(machine.maxLoad().get()) > 0) {
      fails.add("load " + weighs.subtract(machine.maxLoad().get()));
    }
    return Optional.of(machine.maxLoad().get().subtract(weighs));
  }

  /** Whether it is blank; records its column if so. */
  private boolean blank(Dimension dimension, Column column) {
    if (dimension.isBlank()) {
      missing.add(column);
    }
    return dimension.isBlank();
  }

  private static boolean all(boolean... blank) {
    boolean known = true;
    for (boolean one : blank) {
      known &= !one;
    }
    return known;
  }
}
