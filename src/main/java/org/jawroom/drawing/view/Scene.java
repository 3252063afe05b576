package org.jawroom.drawing.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.drawing.view.View.Flat;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.pairing.Layout.PlacedPart;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;

/** The content of a view, from back to front. */
public final class Scene {

  /** The thickness of the table in the drawing; the tables have no column for it. */
  private static final long TABLE_THICKNESS = 40 * Length.MM;

  private final Machine machine;
  private final Layout layout;
  private final List<Neighbour> beside;
  private final Optional<Limit> limit;
  private final Box vise;

  /** {@code beside}: further vises on the table. */
  public Scene(Machine machine, Layout layout, List<Neighbour> beside, Optional<Limit> limit) {
    this.machine = machine;
    this.layout = layout;
    this.beside = List.copyOf(beside);
    this.limit = limit;
    this.vise =
        layout.parts().stream()
            .map(PlacedPart::swept)
            .reduce(Scene::hull)
            .orElseGet(() -> box(layout.workArea(), Interval.of(0, 0)));
  }

  public List<Mark> marks(View view) {
    List<Mark> marks = new ArrayList<>();
    table(view, marks);
    OpenFaces open = new OpenFaces(view);
    List<Mark> overhead = guards(view, marks, open);
    beside(view, marks);
    parts(view, marks, open);
    marks.addAll(open.marks());
    marks.addAll(overhead);
    if (view == View.PLAN) {
      marks.add(new Mark("reach", "spindle's reach", Ink.REACH, Flat.of(layout.reach())));
      marks.add(new Mark("work-area", "", Ink.WORK, Flat.of(layout.workArea())));
      bolts(marks);
    }
    measure()
        .filter(Measure::overlap)
        .ifPresent(
            hit -> marks.add(new Mark("overlap", "", Ink.OVERLAP, view.flat(hit.claimed()))));
    return marks;
  }

  /** Whether a face that is drawn stands somewhere within bounds only. */
  public boolean hasOpenFaces() {
    return Stream.of(View.values())
        .flatMap(view -> marks(view).stream())
        .anyMatch(mark -> mark.ink() == Ink.OPEN_EDGE);
  }

  public Optional<Measure> measure() {
    return limit.map(Measure::of);
  }

  /** What must be visible: the table, the vise, the reach, and the limiting face. */
  public Flat extent(View view) {
    Box all = hull(tableTop(), vise);
    for (Neighbour other : beside) {
      for (PlacedPart part : other.layout().parts()) {
        all = hull(all, part.swept());
      }
    }
    all = hull(all, box(layout.reach(), Interval.of(0, 0)));
    for (SweptGuard guard : shown()) {
      boolean limiting = limits(guard);
      if (limiting || row(guard).isEmpty()) {
        all =
            new Box(
                nearFace(all.x(), guard.box().x()),
                nearFace(all.y(), guard.box().y()),
                limiting && limit.get().axis() == Axis.Z
                    ? nearFace(all.z(), guard.box().z())
                    : all.z());
      }
    }
    return view.flat(all);
  }

  /** Extended to the guard's nearer face if that lies beyond. */
  private static Interval nearFace(Interval seen, Interval guard) {
    if (guard.lo() > seen.hi()) {
      return seen.hull(Interval.of(guard.lo(), guard.lo()));
    }
    return guard.hi() < seen.lo() ? seen.hull(Interval.of(guard.hi(), guard.hi())) : seen;
  }

  private boolean limits(SweptGuard guard) {
    return limit.filter(own -> own.guard().isSameAs(guard)).isPresent();
  }

  private void table(View view, List<Mark> marks) {
    marks.add(new Mark("table", "", Ink.TABLE, view.flat(tableTop())));
    long half =
        machine.slots().width().isKnown() ? machine.slots().width().length() / 2 : Length.MM;
    Axis along = machine.slots().direction();
    if (view == View.SIDE && along == Axis.Y) {
      return;
    }
    long reachAlong = (along == Axis.X ? machine.tableLength() : machine.tableWidth());
    long reach = machine.slots().length().orElse(reachAlong) / 2;
    int number = 1;
    for (long centre : layout.slotCentres()) {
      Rectangle slot =
          Rectangle.of(along, Interval.around(0, reach), Interval.around(centre, half));
      Box box = box(slot, Interval.of(-TABLE_THICKNESS / 2, 0));
      marks.add(new Mark("slot-" + number, String.valueOf(number), Ink.SLOT, view.flat(box)));
      number++;
    }
  }

  private Box tableTop() {
    return new Box(
        Interval.around(0, machine.tableLength() / 2),
        Interval.around(0, machine.tableWidth() / 2),
        Interval.of(-TABLE_THICKNESS, 0));
  }

  /** Adds the guards beside the vise and returns those that pass over or under it. */
  private List<Mark> guards(View view, List<Mark> marks, OpenFaces open) {
    List<Mark> near = new ArrayList<>();
    List<Mark> overhead = new ArrayList<>();
    int number = 1;
    for (SweptGuard guard : shown()) {
      String id = "guard-" + number++;
      boolean limiting = limits(guard);
      Box own = row(guard).map(Guard::limits).orElse(guard.box());
      Box body = during(guard.situation());
      Box nearest = NearestStance.of(own, guard.box(), limiting ? limit.get().partBox() : body);
      if (!limiting && passesOver(view, nearest, body)) {
        overhead.add(new Mark(id, guard.name(), Ink.GUARD_OVERHEAD, view.flat(nearest)));
      } else {
        if (!nearest.equals(guard.box())) {
          marks.add(new Mark(id + "-swept", "", Ink.GUARD_SWEPT, view.flat(guard.box())));
        }
        near.add(new Mark(id, guard.name(), Ink.GUARD, view.flat(nearest)));
        if (OpenFaces.isOpen(guard)) {
          open.guard(id, guard, layout.guardsAtBest());
        }
      }
    }
    marks.addAll(near);
    return overhead;
  }

  /**
   * Each guard once: in the situation in which it limits, else while cutting if it counts there.
   */
  private Iterable<SweptGuard> shown() {
    Map<Integer, SweptGuard> shown = new LinkedHashMap<>();
    for (SweptGuard guard : layout.guards()) {
      if (!guard.table() && !goesElsewhere(guard)) {
        shown.putIfAbsent(guard.rank(), guard);
      }
    }
    return shown.values();
  }

  private boolean goesElsewhere(SweptGuard guard) {
    return limit
        .filter(own -> own.guard().isSameAs(guard) && own.situation() != guard.situation())
        .isPresent();
  }

  /** Whether the guard lies over or under the vise along this view's line of sight. */
  private static boolean passesOver(View view, Box guard, Box body) {
    return guard.along(view.right()).meets(body.along(view.right()))
        && guard.along(view.up()).meets(body.along(view.up()));
  }

  /** Everything that the vise sweeps in one situation. */
  private Box during(Situation situation) {
    return layout.parts().stream()
        .filter(part -> part.part().situation() == situation)
        .map(PlacedPart::swept)
        .reduce(Scene::hull)
        .orElse(vise);
  }

  private static Optional<Guard> row(SweptGuard guard) {
    return guard.guard().filter(Guard::isRow);
  }

  private void parts(View view, List<Mark> marks, OpenFaces open) {
    List<Mark> bodies = new ArrayList<>();
    Set<Flat> swept = new LinkedHashSet<>();
    Set<String> drawn = new LinkedHashSet<>();
    int number = 0;
    for (PlacedPart part : layout.parts()) {
      number++;
      if (!drawn.add(part.part().name() + part.closed() + part.open())) {
        continue; // the same in both situations
      }
      String id = "part-" + number;
      if (!part.outline().isEmpty()) {
        if (drawn.add(part.part().name() + part.outline())) {
          bodies.add(turned(view, id, part));
        }
        continue;
      }
      boolean handle = part.part().handle() || part.part().situation() == Situation.LOADING;
      if (!part.closed().equals(part.swept()) && swept.add(view.flat(part.swept()))) {
        marks.add(
            new Mark(id + "-swept", "", handle ? Ink.HANDLE : Ink.SWEPT, view.flat(part.swept())));
      }
      if (view == View.SIDE && part.part().role() == PartRole.CLAMP) {
        continue; // as long and as high as the base, before which they stand
      }
      bodies.add(
          new Mark(id, part.part().name(), ink(part.part(), handle), view.flat(atLimit(part))));
      open.part(id, view.flat(atLimit(part)), surelyAtLimit(part).map(view::flat));
    }
    marks.addAll(bodies);
  }

  /** A part turned on a swivel base, as it is rather than as the strips that cover it. */
  private Mark turned(View view, String id, PlacedPart strip) {
    boolean handle = strip.part().handle() || strip.part().situation() == Situation.LOADING;
    return new Mark(
        id,
        strip.part().name(),
        ink(strip.part(), handle),
        view.flat(hull(layout, strip)),
        view == View.PLAN ? strip.outline() : List.of());
  }

  /** What all strips of the turned part cover together. */
  private static Box hull(Layout of, PlacedPart strip) {
    return of.parts().stream()
        .filter(part -> part.outline().equals(strip.outline()))
        .filter(part -> part.part().isSameAs(strip.part()))
        .map(PlacedPart::swept)
        .reduce(Scene::hull)
        .orElseThrow();
  }

  /** The vises beside it with the jaws closed, at most the first part labelled. */
  private void beside(View view, List<Mark> marks) {
    int vise = 1;
    for (Neighbour neighbour : beside) {
      Layout other = neighbour.layout();
      vise++;
      Set<Flat> drawn = new LinkedHashSet<>();
      for (PlacedPart part : other.parts()) {
        boolean handle = part.part().handle() || part.part().situation() == Situation.LOADING;
        Flat flat = view.flat(part.outline().isEmpty() ? part.closed() : hull(other, part));
        if (drawn.add(flat)) {
          String id = "vise-" + vise + "-part-" + drawn.size();
          String name = drawn.size() == 1 && view == View.PLAN ? neighbour.name() : "";
          List<Place> outline = view == View.PLAN ? part.outline() : List.of();
          marks.add(new Mark(id, name, ink(part.part(), handle), flat, outline));
        }
      }
      if (view == View.PLAN) {
        int number = 1;
        for (Place bolt : other.bolts()) {
          String id = "vise-" + vise + "-bolt-" + number++;
          marks.add(new Mark(id, "", Ink.BOLT, bolt(bolt, other.thread())));
        }
      }
    }
  }

  private static Flat bolt(Place at, long thread) {
    return new Flat(Interval.around(at.x(), thread / 2), Interval.around(at.y(), thread / 2));
  }

  private static Ink ink(Part part, boolean handle) {
    if (part.role() == PartRole.CLAMP) {
      return Ink.CLAMP;
    }
    return handle ? Ink.HANDLE : Ink.BODY;
  }

  /** At the limiting end of the opening range if this part limits; else with the jaws closed. */
  private Box atLimit(PlacedPart part) {
    return isLimitedOpen(part) ? part.open() : part.closed();
  }

  /** What it covers there whatever its open readings are. */
  private Optional<Box> surelyAtLimit(PlacedPart part) {
    return isLimitedOpen(part) ? part.surelyOpen() : part.surelyClosed();
  }

  private boolean isLimitedOpen(PlacedPart part) {
    return limit
        .filter(own -> own.part().isSameAs(part.part()) && own.opening() == JawEnd.OPEN)
        .isPresent();
  }

  private void bolts(List<Mark> marks) {
    int number = 1;
    for (Place bolt : layout.bolts()) {
      marks.add(
          new Mark(
              "bolt-" + number,
              number++ == 1 ? "M" + layout.thread() / Length.MM : "",
              Ink.BOLT,
              bolt(bolt, layout.thread())));
    }
  }

  private static Box box(Rectangle plan, Interval z) {
    return new Box(plan.x(), plan.y(), z);
  }

  private static Box hull(Box one, Box other) {
    return new Box(one.x().hull(other.x()), one.y().hull(other.y()), one.z().hull(other.z()));
  }
}
