package org.jawroom.report.card.statement.bolting;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Length;
import org.jawroom.placement.space.Place;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TapeFigure;
import org.jawroom.standards.TNut;

/**
 * The two strap clamps beside the base. That a strap's far end stands level or a little higher than
 * the flange, and its stud nearer the vise than the heel, is common practice, no source.
 */
public record StrapFacts(PeopleUnit unit, CardSubject subject) {

  public List<Item> items() {
    List<Item> items = new ArrayList<>();
    List<Place> studs = subject.layout().bolts();
    for (int i = 0; i < studs.size(); i++) {
      items.add(
          new Item(
              "Strap " + (i + 1) + ":",
              "stud in slot "
                  + subject.place().slots().get(i)
                  + ", "
                  + figure(studs.get(i).x() + subject.machine().tableLength() / 2)
                  + " from the table's left edge, "
                  + figure(studs.get(i).y() + subject.machine().tableWidth() / 2)
                  + " from its front edge."));
    }
    TNut nut = BoltFacts.nut(subject.machine().slots().width().length());
    items.add(
        new Item(
            "Studs and nuts:",
            studs.size()
                + " × DIN 508, slot "
                + nut.slot()
                + ", M"
                + nut.thread()
                + "; studs, nuts and washers of class 8.8."));
    if (unit == PeopleUnit.INCH) {
      items.add(
          new InchBoltFacts(
                  nut.thread() * Length.MM,
                  subject.machine().slots().width().length(),
                  studs.size())
              .studsOnly());
    }
    items.add(
        new Item(
            "Far ends:",
            "on blocks level with the base flange or a little higher, never lower; stud nearer the"
                + " vise than the block."));
    items.add(
        new Item(
            "Height:",
            "straps, nuts and studs no higher than "
                + unit.brief(subject.vise().base().bedHeight(), Rounding.DOWN)
                + " above the table."));
    items.add(
        new Item("Torque:", new BoltFacts(unit, subject.outcome(), subject.place()).torque(nut)));
    return items;
  }

  private String figure(long distance) {
    return new TapeFigure(unit).text(distance, Rounding.NEAREST);
  }
}
