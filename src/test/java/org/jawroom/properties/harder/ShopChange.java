package org.jawroom.properties.harder;

import java.util.function.Consumer;
import java.util.function.LongUnaryOperator;
import java.util.function.UnaryOperator;
import org.jawroom.fixture.GuardDraft;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.VisePart;

/** Small changes shared by the properties; what is blank or none stays so, what has no end too. */
final class ShopChange {
  private ShopChange() {}

  /** A known dimension changed. */
  static Dimension known(Dimension dimension, LongUnaryOperator change) {
    return dimension.isKnown() ? Dimension.of(change.applyAsLong(dimension.length())) : dimension;
  }

  /** {@code more} added to a known dimension. */
  static Dimension plus(Dimension dimension, long more) {
    return known(dimension, length -> length + more);
  }

  /** Grown by {@code more} at each end that there is. */
  static Interval grown(Interval interval, long more) {
    return new Interval(
        Length.isBounded(interval.lo()) ? interval.lo() - more : interval.lo(),
        Length.isBounded(interval.hi()) ? interval.hi() + more : interval.hi());
  }

  static UnaryOperator<Guard> guard(Consumer<GuardDraft> change) {
    return guard -> {
      GuardDraft draft = GuardDraft.of(guard);
      change.accept(draft);
      return draft.build();
    };
  }

  static VisePart renamed(VisePart part, String name) {
    return new VisePart(
        name, part.when(), part.uClosed(), part.uOpen(), part.v(), part.w(), part.tolerance());
  }
}
