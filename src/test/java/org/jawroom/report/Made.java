package org.jawroom.report;

import static org.jawroom.report.Invented.mm;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.ClearanceFixtures;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.PlacementFixtures;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.MarginBounds;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Play;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;

/** An outcome in the making: lengths in millimetres as text, what is not said as it mostly is. */
public final class Made {
  private Machine machine;
  private Vise vise;
  private final Verdict verdict;
  private OptionalLong best = OptionalLong.empty();
  private Optional<Limit> limit = Optional.empty();
  private boolean placed;
  private Orientation handleTo = Orientation.FRONT;
  private long x;
  private long y;
  private String mount = "base bolts";
  private List<Integer> slots = List.of(1, 3);
  private Optional<Play> play = Optional.empty();
  private long shortfall;
  private OptionalLong overhang = OptionalLong.of(0);
  private OptionalLong nose = OptionalLong.empty();
  private Optional<Interval> usable = Optional.empty();
  private OptionalLong room = OptionalLong.empty();
  private Optional<BigDecimal> load = Optional.empty();
  private List<Column> missing = List.of();
  private boolean tooShort;
  private List<Caveat> caveats = List.of();
  private OptionalLong hand = OptionalLong.empty();
  private boolean settable = true;
  private boolean clamped;

  public Made(Machine machine, Vise vise, Verdict verdict) {
    this.machine = machine;
    this.vise = vise;
    this.verdict = verdict;
  }

  public Made best(String margin) {
    best = OptionalLong.of(mm(margin));
    return this;
  }

  public Made limit(
      String margin, String guard, String part, Axis axis, Situation situation, JawEnd jaws) {
    return limit(margin, "6", "1", guard, part, axis, situation, jaws);
  }

  public Made limit(
      String margin,
      String required,
      String tolerance,
      String guard,
      String part,
      Axis axis,
      Situation situation,
      JawEnd jaws) {
    Box box = new Box(Interval.of(0, 0), Interval.of(0, 0), Interval.of(0, 0));
    long gap = mm(margin) + mm(required) + mm(tolerance);
    limit =
        Optional.of(
            ClearanceFixtures.limit(
                machine,
                gap,
                mm(required),
                mm(tolerance),
                guard,
                part,
                axis,
                situation,
                jaws,
                box,
                box));
    placed = true;
    return this;
  }

  public Made limit(Limit made) {
    limit = Optional.of(made);
    placed = true;
    return this;
  }

  public Made slots(Integer... used) {
    slots = List.of(used);
    return this;
  }

  public Made at(Orientation turn, String toX, String toY) {
    placed = true;
    handleTo = turn;
    x = mm(toX);
    y = mm(toY);
    return this;
  }

  public Made mount(String name) {
    mount = name;
    return this;
  }

  public Made play(String left, String right, String front, String rear) {
    play = Optional.of(new Play(mm(left), mm(right), mm(front), mm(rear)));
    return this;
  }

  public Made shortfall(String by) {
    shortfall = mm(by);
    return this;
  }

  public Made overhang(String by) {
    overhang = by.isEmpty() ? OptionalLong.empty() : OptionalLong.of(mm(by));
    return this;
  }

  public Made nose(String height) {
    nose = OptionalLong.of(mm(height));
    return this;
  }

  public Made usable(String from, String to) {
    usable = Optional.of(Interval.of(mm(from), mm(to)));
    return this;
  }

  public Made room(String over) {
    room = OptionalLong.of(mm(over));
    return this;
  }

  public Made load(String left) {
    load = Optional.of(new BigDecimal(left));
    return this;
  }

  /** The columns of the open readings; those read here become blank. */
  public Made missing(Column... columns) {
    missing = List.of(columns);
    for (Column column : columns) {
      switch (column) {
        case FRONT_GAP -> machine = machine.withGap(Side.FRONT, Dimension.BLANK);
        case REAR_GAP -> machine = machine.withGap(Side.REAR, Dimension.BLANK);
        case BASE_WIDTH -> {
          Base base = vise.base();
          vise =
              vise.withBase(
                  new Base(base.bedHeight(), Dimension.BLANK, base.rearReach(), base.frontReach()));
        }
        case SCREW_HEIGHT -> {
          Screw screw = vise.screw();
          vise =
              vise.withScrew(
                  new Screw(screw.rear(), screw.front(), Dimension.BLANK, screw.diameter()));
        }
        case HOLE_U -> {
          Dimension known = Invented.known("18");
          Bolt bolt = new Bolt(known, known, Dimension.BLANK, known);
          List<Mount> mounts = new ArrayList<>(vise.mounts());
          mounts.add(new Mount("ends", false, List.of(bolt)));
          vise = vise.toBuilder().mounts(mounts).build();
        }
        default -> {}
      }
    }
    return this;
  }

  public Made shortestToolTooShort() {
    tooShort = true;
    return this;
  }

  public Made but(Caveat... mind) {
    caveats = List.of(mind);
    return this;
  }

  /** The gap round the handle while loading. */
  public Made hand(String gap) {
    hand = OptionalLong.of(mm(gap));
    return this;
  }

  public Made notSettable() {
    settable = false;
    return this;
  }

  public Made clamped() {
    clamped = true;
    return this;
  }

  public Outcome done() {
    Optional<Recommendation> place =
        placed
            ? Optional.of(
                new Recommendation(
                    handleTo,
                    x,
                    y,
                    clamped ? PlacementFixtures.clamped() : PlacementFixtures.bolted(mount),
                    slots,
                    vise.opening(),
                    limit,
                    settable && !caveats.contains(Caveat.NOT_SETTABLE),
                    hand,
                    shortfall,
                    overhang,
                    play,
                    nose))
            : Optional.empty();
    return new Outcome(
        machine,
        vise,
        verdict,
        best,
        place,
        usable,
        caveats,
        room,
        load,
        tooShort,
        MarginBounds.NONE,
        missing,
        List.of(),
        Optional.empty());
  }
}
