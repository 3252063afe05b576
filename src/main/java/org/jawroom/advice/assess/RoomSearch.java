package org.jawroom.advice.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.LongPredicate;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.advice.blank.Relation;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Model;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** Computes {@link Room} by solving for fictitious vises. */
final class RoomSearch {
  private static final Interval SHUT = Interval.of(0, 0);

  /** A hole of unknown size: the solver then lets the vise stand wherever its base may. */
  private static final Bolt ANYWHERE =
      new Bolt(Dimension.of(0), Dimension.of(0), Dimension.BLANK, Dimension.BLANK);

  private final Settings settings;
  private final Machine machine;
  private final ViseSize pattern;

  RoomSearch(Settings settings, Machine machine, ViseSize pattern) {
    this.settings = settings;
    this.machine = machine;
    this.pattern = pattern;
  }

  /**
   * One room per axis along which some allowed turn opens the jaws; none if no bolt goes into the
   * slots.
   */
  List<Room> rooms(List<Long> widths, List<Long> lengths) {
    List<Room> rooms = new ArrayList<>();
    for (Axis axis : List.of(Axis.Y, Axis.X)) {
      List<Orientation> turns =
          machine.turns().stream().filter(turn -> turn.uAxis() == axis).sorted().toList();
      if (!turns.isEmpty() && model(turns.get(0), 0, 0).atBest().hasPlaces()) {
        Orientation turn = turns.get(0);
        rooms.add(
            new Room(
                turns,
                widths.stream()
                    .map(width -> limit(width, length -> fits(turn, length, width)))
                    .toList(),
                lengths.stream()
                    .map(length -> limit(length, width -> fits(turn, length, width)))
                    .toList()));
      }
    }
    return rooms;
  }

  /** The blank columns of the machine that make the figures upper bounds. */
  List<Column> blanks() {
    return machine.turns().stream()
        .findFirst()
        .map(turn -> model(turn, 0, 0).blanks())
        .orElse(List.of())
        .stream()
        .filter(
            column ->
                column.compareTo(Column.FRONT_GAP) >= 0 && column.compareTo(Column.GUARD_GAP) <= 0)
        .toList();
  }

  /** The same search with every open gap of the machine at its least, a blank one as 0. */
  RoomSearch atLeast() {
    return new RoomSearch(settings, BlankGaps.atLeast(machine), pattern);
  }

  private static RoomLimit limit(long given, LongPredicate serves) {
    if (serves.test(Length.LARGEST)) {
      return new RoomLimit(given, Relation.ALWAYS, OptionalLong.empty());
    }
    OptionalLong most = MonotoneSearch.downFrom(Length.LARGEST, 0, serves);
    return new RoomLimit(given, most.isPresent() ? Relation.AT_MOST : Relation.NEVER, most);
  }

  boolean fits(Orientation turn, long length, long width) {
    return model(turn, length, width).atBest().isClearWithHandRoom();
  }

  private Model model(Orientation turn, long length, long width) {
    return Model.of(settings, machine, box(Set.of(turn), length, width), Setup.PLAIN);
  }

  /**
   * A vise that fills the rectangle. Its base is the point at the centre, so that it may stand
   * wherever the centre is over the table top.
   */
  Vise box(Set<Orientation> turns, long length, long width) {
    Dimension none = Dimension.NONE;
    Dimension zero = Dimension.of(0);
    Interval u = Interval.around(0, half(length));
    Interval v = Interval.around(0, half(width));
    long hand =
        Math.max(settings.clearance(), settings.handRoom()) + machine.provenance().tolerance();
    return Vise.builder("room")
        .jaws(new Jaws(false, 0, 0, 0, 0, zero, zero))
        .opening(SHUT)
        .base(new Base(pattern.bedHeight(), zero, zero, zero))
        .screw(new Screw(new Projection(none, none), new Projection(none, none), zero, zero))
        .handle(new Handle(none, none, false, false))
        .turns(turns)
        .mounts(List.of(new Mount(Mount.BASE_BOLTS, true, List.of(ANYWHERE))))
        .provenance(new Provenance(0, false, "", ""))
        .parts(
            List.of(
                part("body", When.ALWAYS, u, v, Interval.of(0, pattern.topCutting())),
                part(
                    VisePart.HANDLE,
                    When.LOADING,
                    u,
                    v,
                    Interval.of(hand, Math.max(hand, pattern.topLoading())))))
        .build();
  }

  /** Rounded up, so that an odd length never claims more room than there is. */
  private static long half(long length) {
    return (length + 1) / 2;
  }

  private static VisePart part(String name, When when, Interval u, Interval v, Interval w) {
    return new VisePart(name, when, u, u, v, w, OptionalLong.empty());
  }
}
