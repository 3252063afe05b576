package org.jawroom.report.assess;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.standards.ClearanceHole;
import org.jawroom.standards.TNut;

/**
 * The columns of a machine that might be bought, in words; lengths in the chosen unit.
 *
 * @param named how many distances are listed
 */
record OfferWords(PeopleUnit unit, int named) {
  static final String UNKNOWN = "unknown: ask";

  String status(Machine machine) {
    return machine.candidate() ? "candidate" : "owned";
  }

  String price(Machine machine) {
    return machine.price().map(BigDecimal::toPlainString).orElse(AssessWords.NOTHING);
  }

  String table(Machine machine) {
    return figure(machine.tableLength()) + " × " + figure(machine.tableWidth());
  }

  String travel(Machine machine) {
    return figure(machine.travelX()) + " × " + figure(machine.travelY());
  }

  String slots(Machine machine) {
    Slots slots = machine.slots();
    String words =
        slots.count()
            + " along "
            + slots.direction().letter()
            + ", "
            + values(slots.width())
            + " wide";
    return slots.needsPitch() ? words + ", " + values(slots.pitch()) + " apart" : words;
  }

  String nose(Machine machine) {
    return values(machine.noseMin()) + " to " + values(machine.noseMax());
  }

  String load(Machine machine) {
    return machine.maxLoad().map(OfferWords::kilograms).orElse(UNKNOWN);
  }

  static String kilograms(BigDecimal load) {
    return JobWords.kilograms(load, RoundingMode.FLOOR) + " kg";
  }

  String source(Machine machine) {
    return machine.provenance().assumedExact()
        ? "not given: taken as exact"
        : (machine.provenance().source().isEmpty() ? "" : machine.provenance().source() + ", ")
            + "± "
            + unit.brief(machine.provenance().tolerance(), Rounding.UP);
  }

  String notLookedFor(Machine machine) {
    List<String> kinds = LookedFor.not(machine);
    return kinds.isEmpty() ? "nothing usual" : String.join(", ", kinds);
  }

  String bolt(Machine machine) {
    OptionalLong thread = thread(machine);
    if (machine.slots().width().isBlank()) {
      return UNKNOWN;
    }
    return thread.isPresent() ? "M" + thread.getAsLong() / Length.MM : "none goes in";
  }

  /** Empty if no bolt goes into the slots or their width is blank. */
  static OptionalLong thread(Machine machine) {
    Dimension width = machine.slots().width();
    return width.isKnown() && machine.slots().count() > 0
        ? TNut.boltFor(width.length())
        : OptionalLong.empty();
  }

  /** The sides to which the handle may point. */
  String handle(Machine machine) {
    return machine.turns().stream()
        .sorted()
        .map(Orientation::word)
        .collect(Collectors.joining(", "));
  }

  /** The distance that two bolt holes need, for each way the vise may stand. */
  String holes(Machine machine) {
    List<String> words = new ArrayList<>();
    for (Axis axis : List.of(Axis.Y, Axis.X)) {
      List<Orientation> turns =
          machine.turns().stream().filter(turn -> turn.uAxis() == axis).sorted().toList();
      if (!turns.isEmpty()) {
        // Two abreast stand side by side across the direction in which the jaws open.
        boolean abreastAlong = machine.slots().direction() != axis;
        words.add(
            "handle "
                + turns.stream().map(Orientation::word).collect(Collectors.joining(" or "))
                + ": "
                + (abreastAlong
                    ? "two abreast go into one slot at any distance; two in line, "
                    : "two in line go into one slot at any distance; two abreast, ")
                + apart(machine.slots()));
      }
    }
    return String.join("; ", words);
  }

  private String apart(Slots slots) {
    if (slots.count() < 2) {
      return "not at all: there is one slot";
    }
    if (!slots.positions().isEmpty()) {
      return "as far apart as two of its slots: "
          + AssessWords.some(
              distances(slots.positions()).stream().map(this::nearest).toList(), named);
    }
    if (!slots.pitch().isKnown()) {
      return "as far apart as two of its slots: slot_pitch is unknown";
    }
    List<Long> multiples = new ArrayList<>();
    for (int between = 1; between < slots.count(); between++) {
      multiples.add(between * slots.pitch().length());
    }
    return multiples.stream().limit(named).map(this::nearest).collect(Collectors.joining(" or "))
        + " apart, or slotted holes that reach that";
  }

  private static List<Long> distances(List<Long> positions) {
    return positions.stream()
        .flatMap(from -> positions.stream().filter(to -> to > from).map(to -> to - from))
        .distinct()
        .sorted()
        .toList();
  }

  String hole(Machine machine) {
    OptionalLong thread = thread(machine);
    if (thread.isEmpty()) {
      return bolt(machine);
    }
    OptionalLong hole = ClearanceHole.of(thread.getAsLong());
    return hole.isPresent()
        ? unit.brief(hole.getAsLong(), Rounding.UP) + " or more"
        : "more than " + unit.brief(thread.getAsLong(), Rounding.UP);
  }

  String nearest(long length) {
    return unit.fine(length, Rounding.NEAREST);
  }

  String figure(long length) {
    return unit.brief(length, Rounding.DOWN);
  }

  /** A reading, rounded as the tables have it: {@code 18}, {@code 18..22}, {@code at most 22}. */
  private String values(Dimension reading) {
    if (reading.isBlank()) {
      return "unknown";
    }
    Interval values = reading.values(-Length.ENDLESS);
    if (!Length.isBounded(values.lo())) {
      return "at most " + nearest(values.hi());
    }
    if (!Length.isBounded(values.hi())) {
      return "at least " + nearest(values.lo());
    }
    return nearest(values.lo()) + (reading.isKnown() ? "" : ".." + nearest(values.hi()));
  }
}
