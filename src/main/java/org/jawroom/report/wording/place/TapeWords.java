package org.jawroom.report.wording.place;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TapeFigure;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.vise.Vise;

/**
 * A placement as a setter measures it with a tape from the table's left and front edges: to the
 * nearest 0.1 mm, or to the nearest 1/32 in where the margin bears that step, else to 0.001 in.
 *
 * <p>A vise that stands off by some amount along x and y loses at most that amount of margin, so
 * what the step takes must not exceed it.
 */
public record TapeWords(PeopleUnit unit, Machine machine, Vise vise) {

  /** One line for each step. */
  public List<String> of(Recommendation place) {
    return of(place, spare(place.limit()));
  }

  /**
   * The same where neighbours limit it as well.
   *
   * @param spare by how much the vise may stand off either way
   */
  public List<String> of(Recommendation place, long spare) {
    List<String> lines = new ArrayList<>();
    lines.add("handle to the " + place.handleTo().word() + ", " + mount(place));
    lines.add(fastening(place));
    lines.addAll(edges(place.handleTo(), place.x(), place.y(), spare));
    return lines;
  }

  /**
   * Where the vise stands, measured from the two edges; a vise without a base is measured from the
   * middle of its jaws.
   *
   * @param x of the vise frame's origin in the table frame, {@code y} likewise
   * @param spare by how much it may stand off either way
   */
  public List<String> edges(Orientation turn, long x, long y, long spare) {
    return measures(turn, x, y).stream().map(measure -> words(measure, spare)).toList();
  }

  /** The place with the most margin. */
  public List<String> edges(Roomiest place) {
    return edges(place.handleTo(), place.x(), place.y(), spare(place.limit()));
  }

  /** Where nothing can be hit, any step of the tape is right. */
  private static long spare(Optional<Limit> limit) {
    return limit.map(Limit::margin).orElse(Long.MAX_VALUE);
  }

  /** The same as data: along x first. */
  public List<TapeMeasure> measures(Orientation turn, long x, long y) {
    TapedPlace there = TapedPlace.of(machine, vise, turn, x, y);
    String face =
        (vise.jaws().both() ? "middle between the jaws" : "fixed-jaw face")
            + (vise.isTurned() ? " (jaws square)" : "");
    boolean alongY = turn.uAxis() == Axis.Y;
    String side = alongY ? "base's left side" : "base's front side";
    String across = vise.isTapedFromBase() ? side : "middle of the jaws";
    return List.of(
        new TapeMeasure(alongY ? across : face, Side.LEFT, there.fromLeft()),
        new TapeMeasure(alongY ? face : across, Side.FRONT, there.fromFront()));
  }

  /**
   * Slots are numbered in the order in which they lie, so of two bolts in different slots the one
   * in the lower slot stands in front (slots along y: on the left).
   */
  public String bolts(List<Integer> slots) {
    return fasteners("bolt", slots);
  }

  private String fasteners(String one, List<Integer> slots) {
    boolean alongX = machine.slots().direction() == Axis.X;
    String first = alongX ? "front" : "left";
    String counted = " (of " + machine.slots().count() + ", counted from the " + first + ")";
    int lowest = Collections.min(slots);
    int highest = Collections.max(slots);
    if (lowest == highest) {
      String all =
          switch (slots.size()) {
            case 1 -> one;
            case 2 -> "both " + one + "s";
            default -> "all " + slots.size() + " " + one + "s";
          };
      return all + " in slot " + lowest + counted;
    }
    if (slots.size() == 2) {
      return first
          + " "
          + one
          + " in slot "
          + lowest
          + ", "
          + (alongX ? "rear " : "right ")
          + one
          + " in slot "
          + highest
          + counted;
    }
    Map<Integer, Long> bolts =
        slots.stream()
            .collect(
                Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
    return bolts.entrySet().stream()
            .map(
                slot ->
                    slot.getValue()
                        + " "
                        + one
                        + (slot.getValue() == 1 ? "" : "s")
                        + " in slot "
                        + slot.getKey())
            .collect(Collectors.joining(", "))
        + counted;
  }

  /** {@code base bolts, M16}; {@code clamps}. */
  private static String mount(Recommendation place) {
    return place.thread().isEmpty()
        ? place.mount()
        : place.mount() + ", " + ThreadWords.of(place.thread());
  }

  /** Which slots the bolts, or the studs of the straps, stand in. */
  public String fastening(Recommendation place) {
    return fasteners(place.fastening().clamped() ? "stud" : "bolt", place.slots());
  }

  private String figure(long distance, long spare) {
    if (unit == PeopleUnit.MM) {
      return unit.text(distance, Rounding.NEAREST);
    }
    TapeFigure tape = new TapeFigure(unit);
    return Math.abs(tape.rounded(distance, Rounding.NEAREST) - distance) <= Math.max(0, spare)
        ? tape.text(distance, Rounding.NEAREST)
        : unit.fineText(distance, Rounding.NEAREST);
  }

  private String words(TapeMeasure measure, long spare) {
    long distance = measure.distance();
    String figure = figure(Math.abs(distance), spare);
    String edge = " the table's " + measure.edge().word() + " edge";
    return measure.what()
        + (distance >= 0 ? " " + figure + " from" + edge : " overhangs" + edge + " by " + figure);
  }
}
