package org.jawroom.plan.program;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ObjLongConsumer;

/** A linear sum of columns with integer coefficients, plus a constant. */
public final class Sum {

  private final Map<Integer, Long> amounts = new TreeMap<>();
  private long constant;

  public Sum add(int column, long amount) {
    amounts.merge(column, amount, Math::addExact);
    return this;
  }

  public Sum add(long amount) {
    constant = Math.addExact(constant, amount);
    return this;
  }

  long constant() {
    return constant;
  }

  public boolean isConstant() {
    return amounts.values().stream().allMatch(amount -> amount == 0);
  }

  public void forEach(ObjLongConsumer<Integer> action) {
    amounts.forEach((column, amount) -> action.accept(column, amount));
  }

  /** The greatest common divisor of the coefficients, without the constant; 1 if there are none. */
  long divisor() {
    long common = 0;
    for (long amount : amounts.values()) {
      common = gcd(common, Math.abs(amount));
    }
    return Math.max(1, common);
  }

  /** The coefficients divided by a common divisor, without the constant. */
  Sum dividedBy(long divisor) {
    Sum quotient = new Sum();
    amounts.forEach((column, amount) -> quotient.add(column, amount / divisor));
    return quotient;
  }

  /** The sum of the absolute coefficients. */
  public long size() {
    long size = 0;
    for (long amount : amounts.values()) {
      size = Math.addExact(size, Math.abs(amount));
    }
    return size;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
