package org.jawroom.report.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.Miss;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** The reasons why mounts do not hold, in words. */
public record MissWords(PeopleUnit unit, Machine machine, Vise vise) {

  /**
   * {@code handle to the left: base bolts: the left bolt misses a slot by 0.4 mm}; one line for
   * each reason.
   */
  public List<String> of(List<Miss> misses) {
    Map<String, Set<Orientation>> turns = new LinkedHashMap<>();
    for (Miss miss : misses) {
      turns.computeIfAbsent(why(miss), reason -> new LinkedHashSet<>()).add(miss.turn());
    }
    List<String> lines = new ArrayList<>();
    turns.forEach((why, of) -> lines.add("handle to the " + or(of) + ": " + why));
    return lines;
  }

  private String why(Miss miss) {
    String amount = unit.fine(miss.shortBy(), Rounding.UP) + " " + unit.word();
    return switch (miss.cause()) {
      case ACROSS_SLOTS ->
          miss.mount() + ": the " + miss.bolt() + " bolt misses a slot by " + amount;
      case ALONG_SLOTS ->
          miss.mount()
              + ": the "
              + miss.bolt()
              + " bolt stands "
              + amount
              + " past the end of its slot";
      case HOLE_TOO_SMALL ->
          miss.mount()
              + ": the hole for the "
              + miss.bolt()
              + " bolt is "
              + amount
              + " too small for the smallest bolt that these slots can hold";
      case NO_ROOM_FOR_CLAMPS ->
          miss.mount()
              + ": base and straps do not all lie on the table with a slot under each strap";
      case OVERHANG ->
          miss.mount() + ": its base would overhang the table by more than max_overhang";
      case NO_SLOT -> "the table has no slots that hold a bolt";
      case TURN_NOT_ALLOWED -> "not allowed by turns (" + whose(miss.turn()) + ")";
      case NO_BOLTS -> "the vise has no bolts and takes no straps";
    };
  }

  private String whose(Orientation turn) {
    if (machine.turns().contains(turn)) {
      return "vise";
    }
    return vise.turns().contains(turn) ? "machine" : "machine and vise";
  }

  private static String or(Set<Orientation> turns) {
    List<String> words = turns.stream().map(Orientation::word).toList();
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
