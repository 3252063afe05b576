package org.jawroom.advice;

import java.util.OptionalLong;

/**
 * The most one side of a vise may measure while its other side is given.
 *
 * @param given the other side
 * @param relation {@link Relation#AT_MOST}; {@link Relation#ALWAYS} where nothing listed limits it;
 *     {@link Relation#NEVER} where there is no room however short it is
 * @param most half-nanometres, a whole multiple of 0.01 mm rounded down; empty but for {@code
 *     AT_MOST}
 */
public record RoomLimit(long given, Relation relation, OptionalLong most) {}
