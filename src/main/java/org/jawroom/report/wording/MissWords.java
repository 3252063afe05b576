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
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/** The reasons why mounts do not hold, in words. */
public record MissWords(PeopleUnit unit, Machine machine, Vise vise) {

  /**
   * {@code handle to the left: base bolts 0.4 mm short of a slot at the left bolt}; one line for
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
          miss.mount() + " " + amount + " short of a slot at the " + miss.bolt() + " bolt";
      case ALONG_SLOTS ->
          miss.mount() + ": the slots are " + amount + " too short at the " + miss.bolt() + " bolt";
      case HOLE_TOO_SMALL ->
          miss.mount()
              + ": the hole of the "
              + miss.bolt()
              + " bolt is "
              + amount
              + " smaller than the bolt that goes with this slot";
      case NO_ROOM_FOR_CLAMPS ->
          miss.mount()
              + ": base and straps do not stand on the table with a slot through each strap";
      case OVERHANG -> miss.mount() + ": its base would hang over an edge by more than is allowed";
      case NO_SLOT -> "no bolt goes with this table's slots";
      case TURN_NOT_ALLOWED -> "left out by " + whose(miss.turn()) + " turns";
      case NO_BOLTS -> "the vise has no mount";
    };
  }

  private String whose(Orientation turn) {
    if (machine.turns().contains(turn)) {
      return "the vise's";
    }
    return vise.turns().contains(turn) ? "the machine's" : "the machine's and the vise's";
  }

  private static String or(Set<Orientation> turns) {
    List<String> words = turns.stream().map(Orientation::word).toList();
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
