package org.jawroom.checks.expected;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.checks.exact.Rational;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.part.BoltParts;
import org.jawroom.clearance.part.ClampParts;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.shop.Check;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/**
 * The expected gap of a check as a sum of readings, by section 10 of the model: the gap of section
 * 5 on one axis, at the place and the opening of the check alone, nothing taken off.
 *
 * <p>Which side of the guard the part stands on, and along a blank axis which axis limits, is
 * decided with every reading as written and open ones at their least; errors never change it.
 */
public final class Expectations {
  /** The order in which axes limit if they are as far apart. */
  private static final List<Axis> AXES = List.of(Axis.Y, Axis.X, Axis.Z);

  private final Settings settings;
  private final Terms terms;

  public Expectations(Settings settings, Terms terms) {
    this.settings = settings;
    this.terms = terms;
  }

  /** A part that the check may speak of, and its bolt if it is one. */
  private record Candidate(Part part, Optional<BoltPlace> bolt) {
    String name() {
      return part.name() + bolt.map(one -> " " + one.mount().name() + " " + one.index()).orElse("");
    }
  }

  /** A gap along one axis. */
  private record Along(Axis axis, LinearForm form, Rational nominal) {}

  /**
   * The expectation of a check; empty if part and guard are nowhere beside each other: neither has
   * an end or a face there, or one of them is not there in that situation.
   */
  public Optional<ExpectedGap> of(Check check) {
    Situation situation = check.whileCutting() ? Situation.CUTTING : Situation.LOADING;
    Optional<Along> nearest = Optional.empty();
    if (check.guard().isEmpty() || situation.counts(check.guard().get().when())) {
      for (Candidate candidate : candidates(check, situation)) {
        Optional<Along> along = along(check, situation, candidate);
        if (along.isPresent()
            && (nearest.isEmpty()
                || along.get().nominal().compareTo(nearest.get().nominal()) < 0)) {
          nearest = along;
        }
      }
    }
    return nearest.map(one -> ExpectedGap.of(check, one.axis(), one.form(), terms));
  }

  private List<Candidate> candidates(Check check, Situation situation) {
    Vise vise = check.vise();
    List<Candidate> all = new ArrayList<>();
    ViseParts.of(vise, Certainty.AT_WORST, new Blanks())
        .forEach(part -> all.add(new Candidate(part, Optional.empty())));
    if (check.part().equals(PartRole.BOLT.word())) {
      all.addAll(bolts(check.machine(), vise));
    }
    if (check.part().equals(PartRole.CLAMP.word()) && vise.hasClampMount()) {
      ClampParts.of(vise, settings.clampRoom(), Certainty.AT_WORST)
          .forEach(part -> all.add(new Candidate(part, Optional.empty())));
    }
    all.removeIf(
        one -> !one.part().name().equals(check.part()) || one.part().situation() != situation);
    return all;
  }

  /** The bolts of the first mount whose holes pass a bolt that goes with the slots. */
  private List<Candidate> bolts(Machine machine, Vise vise) {
    List<Long> threads = PreparedMachine.of(settings, machine, Setup.PLAIN).threads();
    List<Candidate> bolts = new ArrayList<>();
    for (Mount mount : vise.mounts()) {
      long narrowest =
          mount.bolts().stream()
              .flatMap(bolt -> java.util.stream.Stream.of(bolt.holeU(), bolt.holeV()))
              .mapToLong(hole -> Certainty.sizes(hole).lo())
              .min()
              .orElseThrow();
      Optional<Long> thread = threads.stream().filter(one -> one <= narrowest).findFirst();
      if (thread.isPresent()) {
        // Two boxes for each bolt, one for each situation, in the order of the bolts.
        List<Part> parts = BoltParts.of(vise, mount, thread.get());
        for (int i = 0; i < parts.size(); i++) {
          int index = i / Situation.values().length;
          bolts.add(
              new Candidate(parts.get(i), Optional.of(new BoltPlace(mount, index, thread.get()))));
        }
        return bolts;
      }
    }
    return bolts;
  }

  /** The gap on the axis named, or on the one that limits. */
  private Optional<Along> along(Check check, Situation situation, Candidate candidate) {
    Optional<Along> limiting = Optional.empty();
    for (Axis axis : check.axis().map(List::of).orElse(AXES)) {
      for (boolean beyond : new boolean[] {true, false}) {
        Optional<LinearForm> form = gap(check, situation, candidate, axis, beyond);
        if (form.isPresent()) {
          Along along = new Along(axis, form.get(), terms.nominal(form.get()));
          if (limiting.isEmpty() || along.nominal().compareTo(limiting.get().nominal()) > 0) {
            limiting = Optional.of(along);
          }
        }
      }
    }
    return limiting;
  }

  /**
   * @param beyond whether the guard stands at greater coordinates than the part
   */
  private Optional<LinearForm> gap(
      Check check, Situation situation, Candidate candidate, Axis axis, boolean beyond) {
    Machine machine = check.machine();
    Optional<Guard> guard = check.guard();
    GuardFaces faces = new GuardFaces(settings, machine, check.vise(), situation, terms);
    Optional<LinearForm> face = faces.face(guard, axis, !beyond);
    if (face.isEmpty()) {
      return Optional.empty();
    }
    String name = guard.map(Guard::name).orElse(org.jawroom.clearance.guard.SweptGuard.TABLE);
    long tolerance =
        guard.isPresent() && guard.get().tolerance().isPresent()
            ? guard.get().tolerance().getAsLong()
            : machine.provenance().tolerance();
    LinearForm faceAt =
        face.get()
            .plus(
                terms.error(new Unknown.GuardFace(machine.name(), name, axis, !beyond), tolerance));
    LinearForm edge = edge(check, candidate, axis, beyond);
    return Optional.of(beyond ? faceAt.minus(edge) : edge.minus(faceAt));
  }

  /** Where the part's edge at the greater (high) or lesser coordinate stands on the table. */
  private LinearForm edge(Check check, Candidate candidate, Axis axis, boolean high) {
    Orientation turn = check.handleTo();
    Axis own = axis == Axis.Z ? Axis.Z : axis == turn.uAxis() ? Axis.X : Axis.Y;
    int sign = own == Axis.X ? turn.uSign() : own == Axis.Y ? turn.vSign() : 1;
    boolean highEnd = high == (sign > 0);
    PartEnds ends = new PartEnds(check.vise(), check.opening(), settings.clampRoom(), terms);
    LinearForm end =
        ends.end(candidate.part(), candidate.bolt(), own, highEnd)
            .plus(
                terms.error(
                    new Unknown.PartEnd(check.vise().name(), candidate.name(), own, highEnd),
                    candidate.part().tolerance()));
    return (sign > 0 ? end : end.negated()).plus(origin(check, axis));
  }

  /** Where the origin of the vise frame stands, from the two measures of the setup card. */
  private LinearForm origin(Check check, Axis axis) {
    Machine machine = check.machine();
    Vise vise = check.vise();
    if (axis == Axis.Z) {
      return LinearForm.ZERO;
    }
    LinearForm edge =
        axis == Axis.X
            ? LinearForm.constant(check.fromLeft())
                .minus(terms.known(machines(machine, "table_length"), machine.tableLength()).half())
            : LinearForm.constant(check.fromFront())
                .minus(terms.known(machines(machine, "table_width"), machine.tableWidth()).half());
    if (axis == check.handleTo().uAxis() || !vise.isTapedFromBase()) {
      return edge;
    }
    Measurand width = new Measurand("vises", vise.name(), "", "base_width");
    return edge.plus(terms.reading(width, vise.base().width()).half());
  }

  private static Measurand machines(Machine machine, String column) {
    return new Measurand("machines", machine.name(), "", column);
  }
}
