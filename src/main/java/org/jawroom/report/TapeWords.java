package org.jawroom.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Turn;
import org.jawroom.placement.Recommendation;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Vise;

/** A placement as a setter lays it out with a tape from the table's left and front edges. */
record TapeWords(PeopleUnit unit, Machine machine, Vise vise) {

  /** A line for each thing to do. */
  List<String> of(Recommendation place) {
    List<String> lines = new ArrayList<>();
    lines.add("handle to the " + place.handleTo().word() + ", mount " + place.mount());
    lines.add(slots(place));
    Turn turn = place.handleTo();
    String jaws = vise.jaws().both() ? "middle between the jaws" : "fixed-jaw face";
    if (turn.uAxis() == Axis.Y) {
      lines.add(left("base's left side", "middle of the jaws", place));
      lines.add(jaws + " " + from(place.y() + machine.tableWidth() / 2, "front"));
    } else {
      lines.add(jaws + " " + from(place.x() + machine.tableLength() / 2, "left"));
      lines.add(front("base's front side", "middle of the jaws", place));
    }
    return lines;
  }

  private String slots(Recommendation place) {
    String from = machine.slots().direction() == Axis.X ? "front" : "left";
    String slots = place.slots().stream().map(String::valueOf).collect(Collectors.joining(" and "));
    boolean one = place.slots().stream().distinct().count() == 1;
    return "bolts in slot "
        + (one ? place.slots().get(0) + (place.slots().size() > 1 ? ", all of them" : "") : slots)
        + ", counted from the " + from;
  }

  private String left(String base, String otherwise, Recommendation place) {
    long edge = -machine.tableLength() / 2;
    return hasBase()
        ? base + " " + from(place.x() + baseAcross(place.handleTo()).lo() - edge, "left")
        : otherwise + " " + from(place.x() - edge, "left");
  }

  private String front(String base, String otherwise, Recommendation place) {
    long edge = -machine.tableWidth() / 2;
    return hasBase()
        ? base + " " + from(place.y() + baseAcross(place.handleTo()).lo() - edge, "front")
        : otherwise + " " + from(place.y() - edge, "front");
  }

  private boolean hasBase() {
    return vise.simple() && vise.base().width().isKnown();
  }

  /** The base across the jaws' travel, the vise standing at the origin. */
  private Interval baseAcross(Turn turn) {
    Interval v = Interval.around(0, vise.base().width().length() / 2);
    Interval u = Interval.of(0, 0);
    return turn.uAxis() == Axis.Y ? turn.x(u, v) : turn.y(u, v);
  }

  private String from(long distance, String edge) {
    return distance >= 0
        ? unit.text(distance, Rounding.NEAREST) + " from the table's " + edge + " edge"
        : unit.text(-distance, Rounding.NEAREST) + " beyond the table's " + edge + " edge";
  }
}
