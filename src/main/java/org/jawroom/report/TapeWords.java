package org.jawroom.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Turn;
import org.jawroom.placement.Recommendation;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/**
 * A placement as a setter lays it out with a tape from the table's left and front edges; to the nearest tenth
 * of a millimetre or hundredth of an inch.
 */
record TapeWords(PeopleUnit unit, Machine machine, Vise vise) {

  /** A line for each thing to do. */
  List<String> of(Recommendation place) {
    List<String> lines = new ArrayList<>();
    lines.add("handle to the " + place.handleTo().word() + ", mount: " + place.mount());
    lines.add(bolts(place.slots()));
    lines.addAll(edges(place.handleTo(), place.x(), place.y()));
    return lines;
  }

  /**
   * Where the vise stands, measured from the two edges; without a base from the middle of its jaws.
   *
   * @param x of the vise frame's origin in the table frame, {@code y} likewise
   */
  List<String> edges(Turn turn, long x, long y) {
    long half = hasBase() ? vise.base().width().length() / 2 : 0;
    String face = vise.jaws().both() ? "middle between the jaws " : "fixed-jaw face ";
    if (turn.uAxis() == Axis.Y) {
      String side = hasBase() ? "base's left side " : "middle of the jaws ";
      return List.of(side + fromLeft(x - half), face + fromFront(y));
    }
    String side = hasBase() ? "base's front side " : "middle of the jaws ";
    return List.of(face + fromLeft(x), side + fromFront(y - half));
  }

  /**
   * Slots are numbered the way they lie, so of two bolts in different slots the one in the lower stands in
   * front (y slots: on the left).
   */
  private String bolts(List<Integer> slots) {
    boolean alongX = machine.slots().direction() == Axis.X;
    String first = alongX ? "front" : "left";
    String counted = " (of " + machine.slots().count() + ", counted from the " + first + ")";
    int lowest = Collections.min(slots);
    int highest = Collections.max(slots);
    if (lowest == highest) {
      String all = switch (slots.size()) {
        case 1 -> "bolt";
        case 2 -> "both bolts";
        default -> "all " + slots.size() + " bolts";
      };
      return all + " in slot " + lowest + counted;
    }
    if (slots.size() == 2) {
      return first + " bolt in slot " + lowest + ", " + (alongX ? "rear" : "right")
          + " bolt in slot " + highest + counted;
    }
    Map<Integer, Long> bolts =
        slots.stream()
            .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
    return bolts.entrySet().stream()
        .map(slot -> slot.getValue() + (slot.getValue() == 1 ? " bolt" : " bolts")
            + " in slot " + slot.getKey())
        .collect(Collectors.joining(", ")) + counted;
  }

  private boolean hasBase() {
    return vise.simple() && vise.base().width().isKnown();
  }

  private String fromLeft(long x) {
    return from(x + machine.tableLength() / 2, "left");
  }

  private String fromFront(long y) {
    return from(y + machine.tableWidth() / 2, "front");
  }

  private String from(long distance, String edge) {
    return distance >= 0
        ? unit.text(distance, Rounding.NEAREST) + " from the table's " + edge + " edge"
        : unit.text(-distance, Rounding.NEAREST) + " beyond the table's " + edge + " edge";
  }
}
