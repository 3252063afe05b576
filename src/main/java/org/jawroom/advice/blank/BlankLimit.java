package org.jawroom.advice.blank;

import java.util.OptionalLong;
import org.jawroom.shop.OpenReading;

/**
 * The limit that an open reading must keep for the pairing to fit, within its range.
 *
 * @param limit with every other open reading at best: half-nanometres, a whole multiple of 0.01 mm,
 *     rounded toward safety; empty for {@link Relation#ALWAYS} and {@link Relation#NEVER}
 * @param sure the same with every other open reading at worst; empty if no value serves
 */
public record BlankLimit(
    OpenReading reading, Relation relation, OptionalLong limit, OptionalLong sure) {}
