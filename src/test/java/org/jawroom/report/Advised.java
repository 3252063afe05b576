package org.jawroom.report;

import static org.jawroom.report.Invented.mm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.Advice;
import org.jawroom.advice.ToleranceNeeded;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.blank.Relation;
import org.jawroom.advice.remedy.Direction;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.advice.remedy.RemedyKind;
import org.jawroom.advice.tape.Decides;
import org.jawroom.advice.tape.Deciding;
import org.jawroom.clearance.ClearanceFixtures;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.fixture.Guards;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Roomiest;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.space.Place;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;

/** Advice in the making: lengths in millimetres as text, nothing advised that is not said. */
public final class Advised {
  private final Outcome outcome;
  private final List<Remedy> remedies = new ArrayList<>();
  private final List<BlankLimit> limits = new ArrayList<>();
  private final List<Deciding> deciding = new ArrayList<>();
  private Optional<SideBySide> sideBySide = Optional.empty();
  private Optional<ToleranceNeeded> needed = Optional.empty();

  public Advised(Outcome outcome) {
    this.outcome = outcome;
  }

  public static List<Advice> bare(List<Outcome> outcomes) {
    return outcomes.stream().map(outcome -> new Advised(outcome).done()).toList();
  }

  /** Nothing limits it then. */
  public Advised remedy(RemedyKind kind, String amount) {
    return remedy(kind, amount, Orientation.FRONT, Optional.empty());
  }

  public Advised remedy(RemedyKind kind, String amount, String then, String limitedBy) {
    return remedy(kind, amount, Orientation.FRONT, Optional.of(limit(then, limitedBy)));
  }

  public Advised turn(Orientation turn, String then, String limitedBy) {
    return remedy(RemedyKind.TURN, "", turn, Optional.of(limit(then, limitedBy)));
  }

  public Advised move(String guard, Direction way, String amount, String then) {
    return move(guard(guard), way, amount, then);
  }

  public Advised move(Guard guard, Direction way, String amount, String then) {
    remedies.add(
        new Remedy(
            RemedyKind.MOVE,
            Optional.of(guard),
            Optional.of(way),
            OptionalLong.of(mm(amount)),
            Verdict.FITS,
            new Roomiest(
                Orientation.FRONT, "base bolts", 0, 0, Optional.of(limit(then, guard.name())))));
    return this;
  }

  private Advised remedy(RemedyKind kind, String amount, Orientation turn, Optional<Limit> then) {
    OptionalLong length = amount.isEmpty() ? OptionalLong.empty() : OptionalLong.of(mm(amount));
    remedies.add(
        new Remedy(
            kind,
            Optional.empty(),
            Optional.empty(),
            length,
            Verdict.FITS,
            new Roomiest(turn, "base bolts", 0, 0, then)));
    return this;
  }

  public Advised blank(Column column, String guard, Relation relation, String limit) {
    OptionalLong length = limit.isEmpty() ? OptionalLong.empty() : OptionalLong.of(mm(limit));
    limits.add(
        new BlankLimit(
            new OpenReading(
                column,
                Measurand.of(
                    column,
                    column.table().equals("vises")
                        ? outcome.vise().name()
                        : outcome.machine().name(),
                    guard),
                Dimension.BLANK),
            relation,
            length,
            OptionalLong.empty()));
    decides(column, guard, relation, length);
    return this;
  }

  /** It decides the pairing if it has a limit, and settles it if nothing else is missing. */
  private void decides(Column column, String guard, Relation relation, OptionalLong limit) {
    boolean ofMachine = column.compareTo(Column.GUARD_GAP) <= 0;
    String name = ofMachine ? outcome.machine().name() : outcome.vise().name();
    boolean settles = outcome.missing().size() == 1;
    if (limit.isPresent()) {
      deciding.add(
          new Deciding(
              Measurand.of(column, name, guard),
              column,
              ofMachine,
              Dimension.BLANK,
              relation == Relation.AT_LEAST ? Decides.FROM : Decides.UP_TO,
              limit,
              settles ? limit : OptionalLong.empty(),
              settles,
              OptionalLong.empty()));
    }
  }

  public Advised together(String... positions) {
    sideBySide =
        Optional.of(
            positions.length == 0
                ? SideBySide.NONE
                : new SideBySide(
                    Arrays.stream(positions).map(Invented::mm).toList(),
                    Arrays.stream(positions).map(x -> new Place(Invented.mm(x), 0)).toList(),
                    Optional.of(Orientation.FRONT),
                    "base bolts",
                    0));
    return this;
  }

  public Advised needs(String machine, String vise) {
    needed =
        Optional.of(
            new ToleranceNeeded(
                machine.isEmpty() ? OptionalLong.empty() : OptionalLong.of(mm(machine)),
                vise.isEmpty() ? OptionalLong.empty() : OptionalLong.of(mm(vise))));
    return this;
  }

  public Advice done() {
    return new Advice(outcome, remedies, limits, deciding, sideBySide, needed);
  }

  /** A taped guard of that name, or a row of {@code guards}. */
  private static Guard guard(String name) {
    for (Side side : Side.values()) {
      Guard taped = Guard.taped(side, Dimension.of(0));
      if (taped.name().equals(name)) {
        return taped;
      }
    }
    return Guards.beside(name, Side.FRONT, Dimension.of(0));
  }

  private static Limit limit(String margin, String guard) {
    Box box = new Box(Interval.of(0, 0), Interval.of(0, 0), Interval.of(0, 0));
    return ClearanceFixtures.limit(
        mm(margin) + mm("7"),
        mm("6"),
        mm("1"),
        guard,
        "screw rear",
        Axis.Y,
        Situation.CUTTING,
        JawEnd.CLOSED,
        box,
        box);
  }
}
