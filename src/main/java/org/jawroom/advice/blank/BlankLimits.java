package org.jawroom.advice.blank;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import java.util.function.LongPredicate;
import org.jawroom.clearance.Setup;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.MonotoneSearch;
import org.jawroom.placement.pairing.Model;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.ViseReadings;

/**
 * Finds, for each open reading that only helps when larger (gaps) or only when smaller (reaches,
 * widths, projections, thicknesses, handle radius and depth), the limit value at which the pairing
 * still fits with every other open reading at best, and the one with every other at worst; both
 * within the reading's own range. Fitting is the verdict {@code fits}, hand room included.
 */
public final class BlankLimits {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final List<BlankLimit> limits = new ArrayList<>();

  private BlankLimits(Settings settings, Machine machine, Vise vise) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
  }

  /**
   * The limits in the order of {@code missing}, the columns of open readings of an unknown pairing.
   */
  public static List<BlankLimit> of(
      Settings settings, Machine machine, Vise vise, List<Column> missing) {
    BlankLimits builder = new BlankLimits(settings, machine, vise);
    missing.forEach(builder::add);
    return builder.limits;
  }

  private void add(Column column) {
    for (Guard guard : machine.guards()) {
      if (guard.reading() == column && guard.gap().isOpen()) {
        LongFunction<Model> filled =
            value -> model(machine.withInstead(guard, guard.withGap(Dimension.of(value))), vise);
        atLeast(OpenReading.of(machine, guard), filled);
      }
    }
    if (ViseReadings.SMALLER_HELPS.contains(column)) {
      for (OpenReading reading : OpenReading.of(machine, vise, List.of(column))) {
        atMost(
            reading, value -> model(machine, ViseReadings.with(vise, column, Dimension.of(value))));
      }
    }
  }

  /** The values to try of an open reading: none beyond the largest length of a table. */
  private static Interval values(Dimension reading) {
    Interval all = reading.values(reading.isBlank() ? -Length.LARGEST : 0);
    return Interval.of(Math.max(-Length.LARGEST, all.lo()), Math.min(Length.LARGEST, all.hi()));
  }

  private void atLeast(OpenReading reading, LongFunction<Model> filled) {
    Interval values = values(reading.value());
    LongPredicate fits = value -> filled.apply(value).atBest().isClearWithHandRoom();
    LongPredicate isSure = value -> filled.apply(value).isClearWithHandRoom();
    OptionalLong sure = least(values, isSure);
    if (fits.test(values.lo())) {
      limits.add(new BlankLimit(reading, Relation.ALWAYS, OptionalLong.empty(), sure));
    } else {
      add(reading, Relation.AT_LEAST, least(values, fits), sure);
    }
  }

  private void atMost(OpenReading reading, LongFunction<Model> filled) {
    Interval values = values(reading.value());
    LongPredicate fits = value -> filled.apply(value).atBest().isClearWithHandRoom();
    LongPredicate isSure = value -> filled.apply(value).isClearWithHandRoom();
    Interval sizes = Interval.of(Math.max(0, values.lo()), values.hi());
    OptionalLong sure = most(sizes, isSure);
    if (fits.test(sizes.hi())) {
      limits.add(new BlankLimit(reading, Relation.ALWAYS, OptionalLong.empty(), sure));
    } else {
      add(reading, Relation.AT_MOST, most(sizes, fits), sure);
    }
  }

  private void add(OpenReading reading, Relation relation, OptionalLong limit, OptionalLong sure) {
    limits.add(new BlankLimit(reading, limit.isPresent() ? relation : Relation.NEVER, limit, sure));
  }

  /** The least value that serves, in steps of 0.01 mm; the end of the range if only that does. */
  private static OptionalLong least(Interval values, LongPredicate serves) {
    OptionalLong least = MonotoneSearch.from(values.lo(), values.hi(), serves);
    return least.isPresent() || !serves.test(values.hi()) ? least : OptionalLong.of(values.hi());
  }

  private static OptionalLong most(Interval values, LongPredicate serves) {
    OptionalLong most = MonotoneSearch.downFrom(values.hi(), values.lo(), serves);
    return most.isPresent() || !serves.test(values.lo()) ? most : OptionalLong.of(values.lo());
  }

  private Model model(Machine filled, Vise filledVise) {
    return Model.of(settings, filled, filledVise, Setup.PLAIN);
  }
}
