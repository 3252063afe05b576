package org.jawroom.checks.expected;

import java.util.Optional;
import org.jawroom.checks.exact.Rational;
import org.jawroom.checks.exact.ValueRange;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.Check;

/**
 * What the tables let a check find.
 *
 * @param axis along which the gap was measured
 * @param form the gap as a sum of readings and of the errors of the part's end and the guard's face
 * @param slack how far the check's own measures may be off, added up, half-nanometres
 * @param range every gap that would agree, both ends included
 */
public record ExpectedGap(Check check, Axis axis, LinearForm form, long slack, ValueRange range) {

  public static ExpectedGap of(Check check, Axis axis, LinearForm form, Terms terms) {
    // Along z the measures of the place do not matter, along x or y one of them does.
    long slack = check.provenance().tolerance() * (axis == Axis.Z ? 1 : 2);
    return new ExpectedGap(
        check, axis, form, slack, terms.range(form).plus(ValueRange.around(slack)));
  }

  /** What the gap found says. */
  public Agreement says() {
    Rational found = found();
    if (range.contains(found)) {
      return Agreement.AGREES;
    }
    return range.lo().filter(end -> found.compareTo(end) < 0).isPresent()
        ? Agreement.CLOSER
        : Agreement.FARTHER;
  }

  /** How far the gap found lies outside what was expected; empty if it agrees. */
  public Optional<Rational> outside() {
    return switch (says()) {
      case AGREES -> Optional.empty();
      case CLOSER -> range.lo().map(end -> end.minus(found()));
      case FARTHER -> range.hi().map(end -> found().minus(end));
    };
  }

  public Rational found() {
    return Rational.of(check.found());
  }

  /** Whether the gap depends on a quantity. */
  public boolean meets(Unknown unknown) {
    return form.terms().containsKey(unknown);
  }

  /** What a gap found says of the tables. */
  public enum Agreement {
    AGREES("agrees"),
    /** The gap is smaller than any expected: the dangerous case. */
    CLOSER("closer"),
    FARTHER("farther");

    private final String code;

    Agreement(String code) {
      this.code = code;
    }

    /** The word in {@code checks.csv} and for people. */
    public String code() {
      return code;
    }
  }
}
