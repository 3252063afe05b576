package org.jawroom.report.page;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.MachineState;
import org.jawroom.clearance.part.ClampParts;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Bolted;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.ViseReadings;

/** Random shops with readings known within bounds, and questions to their pages. */
final class OpenShops {
  static final List<Column> BODY =
      EnumSet.range(Column.BASE_WIDTH, Column.HANDLE_DEPTH).stream().toList();

  private OpenShops() {}

  /** Opens some readings, most of them by little so that a place remains. */
  private static Dimension opened(Random lot, Dimension known, boolean gap) {
    if (!known.isKnown() || lot.nextInt(3) > 0) {
      return known;
    }
    long value = known.length();
    long below = 2 * Length.NANOMETRE * lot.nextInt(lot.nextBoolean() ? 3 : 1_000_000);
    long above = 2 * Length.NANOMETRE * lot.nextInt(lot.nextBoolean() ? 3 : 1_000_000);
    long least = gap ? value - below : Math.max(0, value - below);
    return switch (lot.nextInt(6)) {
      case 0 -> gap ? Dimension.within(least, Length.ENDLESS) : Dimension.within(0, value + above);
      default -> Dimension.within(least, value + above);
    };
  }

  private static Machine opened(Random lot, Machine machine) {
    Machine open =
        machine.withEachGuard(
            guard ->
                guard.side().isPresent() ? guard.withGap(opened(lot, guard.gap(), true)) : guard);
    return open.toBuilder()
        .nose(opened(lot, machine.noseMin(), false), opened(lot, machine.noseMax(), false))
        .build();
  }

  private static Vise opened(Random lot, Vise vise) {
    Vise open = vise;
    if (vise.simple()) {
      for (Column column : BODY) {
        open = ViseReadings.with(open, column, opened(lot, ViseReadings.of(open, column), false));
      }
    }
    return open;
  }

  /** Machines and vises of random shops, each against each. */
  static ShopPage page(Random lot, long seed, OptionalLong tool, Profile... profiles) {
    List<Machine> machines = new ArrayList<>();
    List<Vise> vises = new ArrayList<>();
    for (Profile profile : profiles) {
      Shop one = RandomShops.shop(profile, seed);
      one.machines().forEach(machine -> machines.add(opened(lot, machine)));
      one.vises().forEach(vise -> vises.add(opened(lot, vise)));
    }
    SettingsDraft draft = SettingsDraft.of(Settings.DEFAULTS);
    draft.shortestTool = tool;
    return ShopPage.of(new Shop(draft.build(), machines, vises, List.of()));
  }

  /** One question to the page, and the pairing with the supposed readings filled in. */
  record Question(
      Map<String, Object> state, Machine machine, Vise vise, Bolted seat, MachineState moment) {

    long x() {
      return (Long) state.get("x");
    }

    long y() {
      return (Long) state.get("y");
    }

    /** The parts at worst of what is still open, and what holds the vise. */
    List<Part> parts(Settings settings) {
      List<Part> parts = new ArrayList<>(ViseParts.of(vise, Certainty.AT_WORST, new Blanks()));
      boolean clamped = seat.parts().stream().anyMatch(part -> part.role() == PartRole.CLAMP);
      parts.addAll(
          clamped
              ? ClampParts.of(vise, settings.clampRoom(), Certainty.AT_WORST)
              : seat.parts().stream().filter(part -> part.role() == PartRole.BOLT).toList());
      return parts;
    }
  }

  static List<Question> questions(ShopPage page, Random lot) {
    List<Question> questions = new ArrayList<>();
    for (int i = 0; i < page.pairings().size(); i++) {
      Outcome outcome = page.outcomes().get(i);
      if (!page.pairings().get(i).fastened().isEmpty()) {
        questions.add(question(page, i, outcome, lot));
      }
    }
    return questions;
  }

  private static Question question(ShopPage page, int index, Outcome outcome, Random lot) {
    Machine machine = outcome.machine();
    Vise vise = outcome.vise();
    Map<String, Long> ofMachine = new LinkedHashMap<>();
    Map<String, Long> ofVise = new LinkedHashMap<>();
    for (OpenReading reading : outcome.openReadings()) {
      long value = value(lot, reading.value().values(-100 * Length.MM));
      if (reading.column().compareTo(Column.BOLT_SPACING) >= 0
          || vise.opening().length() == 0 && reading.column().name().contains("PROJECTION")
          || lot.nextInt(3) == 0) {
        continue;
      }
      Dimension known = Dimension.of(value);
      if (reading.isOfMachine()) {
        ofMachine.put(reading.measurand().reading(), value);
        machine = filled(machine, reading, known);
      } else {
        ofVise.put(reading.measurand().reading(), value);
        vise = ViseReadings.with(vise, reading.column(), known);
      }
    }
    List<Bolted> seats =
        Model.of(page.shop().settings(), outcome.machine(), outcome.vise(), Setup.PLAIN).bolted();
    Bolted seat = seats.get(lot.nextInt(seats.size()));
    Rectangle places = seat.places().get(lot.nextInt(seat.places().size()));
    long opening = within(lot, vise.opening());
    MachineState moment =
        lot.nextBoolean()
            ? MachineState.cutting(
                within(lot, Interval.around(machine.spindleX(), machine.reachX())),
                within(lot, Interval.around(machine.spindleY(), machine.reachY())),
                opening)
            : MachineState.loading(machine, opening);
    Map<String, Object> state = new HashMap<>();
    state.put("machine", index / page.shop().vises().size());
    state.put("vise", index % page.shop().vises().size());
    state.put("turn", seat.turn().word());
    state.put("mount", seat.fastening().index());
    state.put("thread", seat.fastening().anchors().orElseThrow().nutRoom());
    state.put("x", within(lot, places.x()));
    state.put("y", within(lot, places.y()));
    state.put("situation", moment.situation() == Situation.CUTTING ? 1 : 2);
    state.put("spindleX", moment.spindleX());
    state.put("spindleY", moment.spindleY());
    state.put("opening", opening);
    state.put("hand", 0L);
    state.put("ofMachine", ofMachine);
    state.put("ofVise", ofVise);
    return new Question(state, machine, vise, seat, moment);
  }

  private static Machine filled(Machine machine, OpenReading reading, Dimension known) {
    return switch (reading.column()) {
      case NOSE_MIN -> machine.toBuilder().nose(known, machine.noseMax()).build();
      case NOSE_MAX -> machine.toBuilder().nose(machine.noseMin(), known).build();
      case GUARD_GAP ->
          machine.withEachGuard(
              guard ->
                  guard.isRow() && guard.name().equals(reading.measurand().item())
                      ? guard.withGap(known)
                      : guard);
      default -> machine.withGap(Side.valueOf(reading.column().name().replace("_GAP", "")), known);
    };
  }

  /** A whole nanometre of an interval, as readings are; its ends now and then. */
  private static long value(Random lot, Interval values) {
    Interval ended = Interval.of(values.lo(), Math.min(values.hi(), values.lo() + 500 * Length.MM));
    return within(lot, Interval.of(ended.lo() / 2, ended.hi() / 2)) * 2;
  }

  private static long within(Random lot, Interval interval) {
    return switch (lot.nextInt(6)) {
      case 0 -> interval.lo();
      case 1 -> interval.hi();
      default -> interval.lo() + (long) (lot.nextDouble() * interval.length());
    };
  }
}
