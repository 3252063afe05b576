package org.jawroom.report.card.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jawroom.advice.blank.BlankGaps;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TapeFigure;
import org.jawroom.report.wording.place.WhereWords;
import org.jawroom.shop.value.Column;

/** The verification table: the tightest gaps, in the order in which a setter jogs to them. */
public record Checkpoints(PeopleUnit unit, CardSubject subject) {
  private static final int MOST = 5;

  /** At most five; none if no guard is listed. */
  public List<Checkpoint> rows() {
    return limits().stream().map(this::row).toList();
  }

  private List<Limit> limits() {
    return limits(subject.pairs());
  }

  /**
   * The gaps to check, in the order of the table.
   *
   * @param pairs in ascending order of margin
   */
  public static List<Limit> limits(List<Limit> pairs) {
    List<Limit> chosen = new ArrayList<>();
    Set<List<Object>> places = new HashSet<>();
    for (Limit limit : pairs) {
      if (chosen.size() < MOST && places.add(placeOf(limit))) {
        chosen.add(limit);
      }
    }
    chosen.sort(
        Comparator.comparing(Checkpoints::isHandle)
            .thenComparing(Checkpoints::jaws)
            .thenComparing(Checkpoints::table));
    return List.copyOf(chosen);
  }

  /**
   * The key by which gaps count as one place. Cutting is always as tight as loading except for the
   * handle, which is turned while loading and may hang while cutting.
   */
  private static List<Object> placeOf(Limit limit) {
    List<Object> both = List.of(limit.part().role(), limit.part().row(), limit.guard().rank());
    return isHandle(limit) ? List.of(both, limit.situation()) : both;
  }

  /** The handle goes on last, after all checks with it off. */
  private static boolean isHandle(Limit limit) {
    return limit.part().handle();
  }

  /** Jaws closed, or at any opening, before jaws open. */
  private static boolean jaws(Limit limit) {
    return limit.opening() == JawEnd.OPEN;
  }

  /** Table back, forward, left, right, then heights; loading after cutting. */
  private static int table(Limit limit) {
    boolean low = WhereWords.guardIsLow(limit);
    int way =
        switch (limit.axis()) {
          case Y -> low ? 1 : 0;
          case X -> low ? 2 : 3;
          case Z -> 4;
        };
    return limit.situation() == Situation.LOADING ? way + 5 : way;
  }

  private Checkpoint row(Limit limit) {
    Outcome outcome = subject.outcome();
    Interval openings = subject.place().openings();
    WhereWords where = new WhereWords(unit, outcome.machine(), outcome.vise());
    String handle = isHandle(limit) ? ", handle on" : "";
    return new Checkpoint(
        WhereWords.pair(limit),
        where.of(limit, openings) + handle + " (" + way(limit.axis()) + ")",
        expected(limit),
        check(limit),
        figure(limit, limit.required(), Rounding.UP),
        figure(limit, Math.max(limit.required(), limit.gap() - limit.tolerance()), Rounding.UP));
  }

  private static String way(Axis axis) {
    return switch (axis) {
      case X -> "left to right";
      case Y -> "front to rear";
      case Z -> "up and down";
    };
  }

  /**
   * The computed gap plus and minus the tolerance of both readings, rounded outward to the
   * displayed digits; without an upper end where a reading known within bounds may leave more.
   */
  private Item expected(Limit limit) {
    long lo = limit.gap() - limit.tolerance();
    long hi = limit.gap() + limit.tolerance();
    return new Item(
        (lo < 0 ? "0 (may touch)" : figure(limit, lo, Rounding.DOWN))
            + (mayBeMore(limit)
                ? " or more"
                : " to " + figure(limit, Math.max(0, hi), Rounding.UP)),
        "± "
            + (unit == PeopleUnit.INCH
                ? unit.fine(limit.tolerance(), Rounding.UP)
                : unit.brief(limit.tolerance(), Rounding.UP))
            + (limit.tolerance() > 0 ? " included" : ""));
  }

  /**
   * Whether more may be left than the gap computed: by the strips of a turned part, or by an open
   * reading, that of the guard itself or any that is no gap.
   */
  private boolean mayBeMore(Limit limit) {
    return isTurned(limit.part())
        || limit.guard().guard().filter(guard -> guard.gap().isOpen()).isPresent()
        || subject.outcome().open().stream().anyMatch(column -> !BlankGaps.isGap(column));
  }

  /** Whether a part turns, or may turn, on the swivel base that the vise stands turned on. */
  private boolean isTurned(Part part) {
    return subject.outcome().vise().isTurned()
        && part.role() != PartRole.BASE
        && part.role() != PartRole.BOLT;
  }

  /** To 0.1 mm; in inches to 1/32 where a rule reads it, to 0.001 where a gauge is put in. */
  private String figure(Limit limit, long length, Rounding rounding) {
    if (unit == PeopleUnit.MM) {
      return unit.text(length, rounding);
    }
    return isRuled(limit)
        ? new TapeFigure(unit).text(length, rounding)
        : unit.fineText(length, rounding);
  }

  private String check(Limit limit) {
    String gauge = new GoGauge(unit).words(limit.required(), limit.gap() - limit.tolerance());
    if (isDoor(limit)) {
      return gauge + " taped on, door shut";
    }
    return isRuled(limit) ? "rule or tape" : gauge + " must pass";
  }

  private static boolean isRuled(Limit limit) {
    return !isDoor(limit) && !isHidden(limit);
  }

  /** Nobody can reach in past a closed door. */
  private static boolean isDoor(Limit limit) {
    return limit
        .guard()
        .guard()
        .filter(
            guard -> guard.reading() == Column.FRONT_GAP || guard.kind().equalsIgnoreCase("door"))
        .isPresent();
  }

  /**
   * Behind the vise, over or under something, or down at the bolts: places where a rule cannot be
   * held and read.
   */
  private static boolean isHidden(Limit limit) {
    return limit.axis() == Axis.Z
        || limit.axis() == Axis.Y && !WhereWords.guardIsLow(limit)
        || limit.part().role() == PartRole.BOLT;
  }
}
