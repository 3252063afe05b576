package org.jawroom.advice.tape;

import java.util.OptionalLong;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;

/**
 * What an open reading decides for one unknown pairing.
 *
 * @param column by which the pairing lists it as missing
 * @param ofMachine whether it is read on the machine rather than on the vise
 * @param bounds what is known of it
 * @param limit half-nanometres, for {@link Decides#FROM} and {@link Decides#UP_TO}
 * @param sure the value from which on, or up to which, it fits whatever the others are; empty if
 *     there is none
 * @param settles whether it can settle the pairing by itself
 * @param within how closely to read it, ± half-nanometres, a whole multiple of 0.01 mm, rounded
 *     down; empty if nothing asks for it
 */
public record Deciding(
    Measurand reading,
    Column column,
    boolean ofMachine,
    Dimension bounds,
    Decides how,
    OptionalLong limit,
    OptionalLong sure,
    boolean settles,
    OptionalLong within) {
  public Deciding {
    if (limit.isPresent() != (how == Decides.FROM || how == Decides.UP_TO)) {
      throw new IllegalArgumentException(how + " with limit " + limit);
    }
  }

  /** Whether it matters to the pairing by itself. */
  public boolean matters() {
    return how != Decides.TOGETHER;
  }
}
