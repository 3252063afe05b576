package org.jawroom.advice.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.pairing.Model;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;

/** Finds the open readings that decide an unknown pairing. */
public final class DecidingReadings {

  /** How many values of a reading without a limit are tried, its ends included. */
  private static final int TRIED = 25;

  /** The part of a range that ± the accuracy of a reading may make up. */
  private static final long SHARE = 8;

  private final Settings settings;
  private final Outcome outcome;
  private final List<BlankLimit> limits;
  private final List<FillableReading> open;

  private DecidingReadings(Settings settings, Outcome outcome, List<BlankLimit> limits) {
    this.settings = settings;
    this.outcome = outcome;
    this.limits = limits;
    this.open = OpenReadings.of(outcome);
  }

  /**
   * In the order of the tables; empty if the pairing does not fit even at best.
   *
   * @param outcome of an unknown pairing
   * @param limits of its readings
   */
  public static List<Deciding> of(Settings settings, Outcome outcome, List<BlankLimit> limits) {
    Model model = Model.of(settings, outcome.machine(), outcome.vise(), Setup.PLAIN);
    return model.atBest().isClearWithHandRoom()
        ? new DecidingReadings(settings, outcome, limits).found()
        : List.of();
  }

  private List<Deciding> found() {
    List<Deciding> found = new ArrayList<>();
    open.forEach(reading -> deciding(reading).ifPresent(found::add));
    if (!found.isEmpty()) {
      return found;
    }
    return open.size() == 1
        ? List.of(
            deciding(open.get(0), Decides.SOME, OptionalLong.empty(), OptionalLong.empty(), true))
        : open.stream().map(DecidingReadings::together).toList();
  }

  private Optional<Deciding> deciding(FillableReading reading) {
    Optional<BlankLimit> limit = limits.stream().filter(one -> isOf(one, reading)).findFirst();
    if (limit.isEmpty()) {
      return someFail(reading)
          ? Optional.of(
              deciding(
                  reading,
                  Decides.SOME,
                  OptionalLong.empty(),
                  OptionalLong.empty(),
                  open.size() == 1))
          : Optional.empty();
    }
    BlankLimit found = limit.get();
    boolean settles = found.sure().isPresent() || open.size() == 1;
    return switch (found.relation()) {
      case AT_LEAST ->
          Optional.of(deciding(reading, Decides.FROM, found.limit(), found.sure(), settles));
      case AT_MOST ->
          Optional.of(deciding(reading, Decides.UP_TO, found.limit(), found.sure(), settles));
      case ALWAYS, NEVER -> Optional.empty();
    };
  }

  private static boolean isOf(BlankLimit limit, FillableReading reading) {
    return limit.reading().measurand().equals(reading.reading());
  }

  /** Whether one of the values tried does not let the pairing fit, all others at best. */
  private boolean someFail(FillableReading reading) {
    Interval values = OpenReadings.tried(reading);
    for (int i = 0; i < TRIED; i++) {
      long value = values.lo() + (values.hi() - values.lo()) / (TRIED - 1) * i;
      if (i == TRIED - 1) {
        value = values.hi();
      }
      if (isPossible(reading, value)) {
        FillableReading.Filled filled = reading.filled().apply(value);
        if (!Model.of(settings, filled.machine(), filled.vise(), Setup.PLAIN)
            .atBest()
            .isClearWithHandRoom()) {
          return true;
        }
      }
    }
    return false;
  }

  /** The nose's lowest height is not above its highest. */
  private boolean isPossible(FillableReading reading, long value) {
    Machine machine = outcome.machine();
    return switch (reading.column()) {
      case NOSE_MIN -> machine.noseMax().isBlank() || value <= machine.noseMax().lo();
      case NOSE_MAX -> machine.noseMin().isBlank() || value >= machine.noseMin().hi();
      default -> true;
    };
  }

  private static Deciding together(FillableReading reading) {
    return deciding(reading, Decides.TOGETHER, OptionalLong.empty(), OptionalLong.empty(), false);
  }

  private static Deciding deciding(
      FillableReading reading,
      Decides how,
      OptionalLong limit,
      OptionalLong sure,
      boolean settles) {
    return new Deciding(
        reading.reading(),
        reading.column(),
        reading.isOfMachine(),
        reading.bounds(),
        how,
        limit,
        sure,
        settles,
        within(reading.bounds(), reading.tolerance()));
  }

  static OptionalLong within(Dimension bounds, long tolerance) {
    long least = tolerance > 0 ? tolerance : Length.ENDLESS;
    if (!bounds.isBlank() && Length.isBounded(bounds.lo()) && Length.isBounded(bounds.hi())) {
      least = Math.min(least, (bounds.hi() - bounds.lo()) / SHARE);
    }
    return Length.isBounded(least)
        ? OptionalLong.of(Length.floorTo(least, MonotoneSearch.GRAIN))
        : OptionalLong.empty();
  }
}
