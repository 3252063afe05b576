package org.jawroom.advice;

import java.util.OptionalLong;
import org.jawroom.shop.Column;

/**
 * The limit that a blank dimension must keep for the pairing to fit, with every other blank at its
 * best.
 *
 * @param guard for {@link Column#GUARD_GAP} the guard whose gap it is; else empty
 * @param limit half-nanometres, a whole multiple of 0.01 mm, rounded toward safety; empty for
 *     {@link Relation#ALWAYS} and {@link Relation#NEVER}
 */
public record BlankLimit(Column column, String guard, Relation relation, OptionalLong limit) {}
