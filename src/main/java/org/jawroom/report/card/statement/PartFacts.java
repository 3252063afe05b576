package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.job.Unchecked;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.Words;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;

/** The part of a job in the vise. */
public record PartFacts(PeopleUnit unit, JobOutcome job) {

  public List<Item> items() {
    Vise vise = job.vise();
    List<Item> items = new ArrayList<>();
    items.add(new Item(job.job().name() + ":", new JobWords(unit).size(job.job()) + "."));
    Recommendation place = job.place().orElseThrow();
    items.add(
        new Item(
            "Opening:",
            "grips at "
                + unit.fine(job.job().width(), Rounding.NEAREST)
                + "; do not open beyond "
                + unit.brief(place.openings().hi(), Rounding.DOWN)
                + "."));
    long parallels = job.partHeights().lo() - vise.base().bedHeight();
    items.add(
        new Item(
            "Parallels:",
            parallels == 0
                ? "none, it rests on the bed."
                : unit.fine(parallels, Rounding.NEAREST)
                    + " high, from the bed to its underside."));
    long above = job.partHeights().hi() - vise.top();
    items.add(
        new Item(
            "Stick-up:",
            above >= 0
                ? unit.brief(above, Rounding.UP) + " above the jaws."
                : unit.brief(-above, Rounding.DOWN) + " below the jaws' top: mind the jaws."));
    items.add(
        new Item(
            vise.jaws().both() ? "Middle of the jaws:" : "Fixed jaw's face:",
            vise.swivel().map(PartFacts::turned).orElseGet(this::face)));
    items.add(new Item("Tools:", tools()));
    return items;
  }

  /** It lies along neither axis, so that no X or Y of it is one to type in. */
  private static String turned(Swivel swivel) {
    return "at "
        + Words.angle(swivel)
        + ": no X and Y of it here; pick up the part with the edge finder.";
  }

  /** From where the spindle stands at mid-travel, the tool taken to move (ISO 841). */
  private String face() {
    Machine machine = job.machine();
    Recommendation place = job.place().orElseThrow();
    boolean alongY = place.handleTo().uAxis() == Axis.Y;
    return "X "
        + signed(place.x() - machine.spindleX())
        + (alongY ? " (middle of the jaw)" : "")
        + ", Y "
        + signed(place.y() - machine.spindleY())
        + (alongY ? "" : " (middle of the jaw)")
        + " from the spindle's mid-travel, as taped: pick it up with the edge finder.";
  }

  private String signed(long distance) {
    return (distance < 0 ? "−" : distance > 0 ? "+" : "")
        + unit.brief(Math.abs(distance), Rounding.NEAREST);
  }

  private String tools() {
    List<String> words = new ArrayList<>();
    if (job.toolRoom().isPresent() && job.job().toolLength().isKnown()) {
      words.add(
          "longest "
              + unit.brief(job.job().toolLength().length(), Rounding.DOWN)
              + ", leaves "
              + unit.brief(job.toolRoom().getAsLong(), Rounding.DOWN)
              + " over the part with the nose at its highest");
    }
    OptionalLong nose = job.place().orElseThrow().noseNotBelow();
    if (nose.isPresent()) {
      words.add("nose not below " + unit.brief(nose.getAsLong(), Rounding.UP) + " above the table");
    }
    if (job.shortestStickOut().isPresent()) {
      words.add(
          "a tool for the part's top sticks out "
              + unit.brief(job.shortestStickOut().getAsLong(), Rounding.UP)
              + " at least");
    }
    return words.isEmpty() ? "no height to check them by: look." : String.join("; ", words) + ".";
  }

  /** What a blank leaves unchecked, as cautions. */
  static List<String> cautions(JobOutcome job) {
    return job.unchecked().stream()
        .map(
            what ->
                what == Unchecked.TOOL
                    ? "NOT CHECKED: the height of the tool over the part. Jog there slowly."
                    : "NOT CHECKED: the load on the table. Weigh vise and part.")
        .toList();
  }
}
