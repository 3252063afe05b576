package org.jawroom.reference.solve;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongFunction;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.model.RefMachine.Stop;
import org.jawroom.reference.model.RefModel;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/**
 * The remedies of a pairing that are there or not, and those that serve the better the larger they
 * are: all but {@code raise} and boxes that move.
 */
public final class RefRemedies {
  private static final long GRAIN = Length.MM / 100;
  private static final long FAR = 4 * Length.LARGEST;

  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final boolean awkward;
  private final Map<String, String> remedies = new TreeMap<>();

  private RefRemedies(Settings settings, Machine machine, Vise vise, boolean awkward) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    this.awkward = awkward;
  }

  /** Name to amount in half-nanometres, if it has one, and verdict. */
  public static Map<String, String> of(
      Settings settings, Machine machine, Vise vise, Verdict verdict) {
    RefRemedies all = new RefRemedies(settings, machine, vise, verdict == Verdict.AWKWARD);
    all.handle();
    all.turns();
    all.stops();
    all.gaps();
    if (!all.awkward) {
      all.clearance();
    }
    return all.remedies;
  }

  /** A pairing with one change. */
  private interface Changed {
    RefModel model(Settings settings);
  }

  private boolean clear(Changed changed, boolean handRoom) {
    RefModel model =
        changed.model(handRoom ? settings : ReferencePairing.withoutHandRoom(settings));
    // Worked over the top, a handle needs a screw diameter that may be blank.
    return model.missing.isEmpty() && new RefChoice(model, model.wholeOpening()).somewhereClear();
  }

  private boolean serves(Changed changed) {
    return clear(changed, awkward);
  }

  private void add(String name, String amount, Changed changed) {
    remedies.put(name, amount + (clear(changed, true) ? "fits" : "awkward"));
  }

  private void unmeasured(String name, Vise other) {
    Changed changed = asked -> new RefModel(asked, machine, other, false);
    if (serves(changed)) {
      add(name, "", changed);
    }
  }

  /** The least amount up to {@code most} in steps of 0.01 mm, where more never serves worse. */
  private void measured(String name, long most, LongFunction<Changed> by) {
    long low = 0;
    long high = most / GRAIN;
    if (!serves(by.apply(high * GRAIN))) {
      return;
    }
    while (high - low > 1) {
      long middle = (low + high) / 2;
      if (serves(by.apply(middle * GRAIN))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    add(name, high * GRAIN + " ", by.apply(high * GRAIN));
  }

  private void handle() {
    Handle handle = vise.handle();
    Handle off = new Handle(handle.radius(), handle.depth(), false, handle.fullSwing());
    Handle upper = new Handle(handle.radius(), handle.depth(), handle.onWhileCutting(), false);
    unmeasured(
        "handle off",
        vise.withHandle(off)
            .withParts(
                vise.parts().stream()
                    .filter(part -> !isHandle(part) || part.when() != When.CUTTING)
                    .map(part -> isHandle(part) ? part.withWhen(When.LOADING) : part)
                    .toList()));
    unmeasured("upper swing", vise.withHandle(upper));
  }

  private static boolean isHandle(VisePart part) {
    return part.name().equals(VisePart.HANDLE);
  }

  private void turns() {
    for (Orientation turn : Orientation.values()) {
      if (!machine.turns().contains(turn) || !vise.turns().contains(turn)) {
        Machine mill = machine.withTurns(Set.of(turn));
        Changed changed = asked -> new RefModel(asked, mill, vise.withTurns(Set.of(turn)), false);
        boolean better = !"fits".equals(remedies.get("turn"));
        if (serves(changed) && better) {
          add("turn", "", changed);
        }
      }
    }
  }

  private void stops() {
    Map<String, Side> ends = new LinkedHashMap<>();
    ends.put("travel, table front", Side.FRONT);
    ends.put("travel, table back", Side.REAR);
    ends.put("travel, table left", Side.LEFT);
    ends.put("travel, table right", Side.RIGHT);
    ends.forEach(
        (name, end) -> {
          boolean alongX = end == Side.LEFT || end == Side.RIGHT;
          long travel = alongX ? machine.travelX() : machine.travelY();
          measured(
              name,
              travel / 2,
              by -> asked -> RefModel.stopped(asked, machine, vise, new Stop(end, by)));
        });
  }

  private void gaps() {
    for (Guard guard : machine.guards()) {
      if (guard.side().isPresent()) {
        measured(
            "move " + guard.name(),
            FAR,
            by -> {
              Guard moved = guard.withGap(Dimension.of(guard.gap().length() + by));
              Machine mill = machine.withInstead(guard, moved);
              return asked -> new RefModel(asked, mill, vise, false);
            });
      }
    }
  }

  private void clearance() {
    long most = settings.clearance();
    for (Guard guard : machine.guards()) {
      most = Math.min(most, guard.clearance().orElse(most));
    }
    measured(
        "clearance",
        most,
        by -> {
          Machine mill = machine.withEachGuard(guard -> less(guard, by));
          return asked ->
              new RefModel(
                  asked.toBuilder().clearance(settings.clearance() - by).build(),
                  mill,
                  vise,
                  false);
        });
  }

  private static Guard less(Guard guard, long by) {
    return guard.clearance().isPresent()
        ? guard.withClearance(OptionalLong.of(guard.clearance().getAsLong() - by))
        : guard;
  }
}
