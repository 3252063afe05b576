package org.jawroom.advice.assess;

import java.util.OptionalLong;
import org.jawroom.advice.blank.Relation;

/**
 * The greatest size of one side of a vise for a given size of the other side.
 *
 * @param given the size of the other side
 * @param relation {@link Relation#AT_MOST}; {@link Relation#ALWAYS} if nothing listed limits it;
 *     {@link Relation#NEVER} if there is no room however short it is
 * @param most half-nanometres, a whole multiple of 0.01 mm rounded down; present for {@code
 *     AT_MOST} only
 */
public record RoomLimit(long given, Relation relation, OptionalLong most) {}
