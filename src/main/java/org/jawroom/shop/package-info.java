/**
 * What the tables say, as validated records: machines with their guards, vises with their parts and
 * mounts, jobs and settings.
 *
 * <p><b>Unit.</b> Lengths are half-nanometres ({@link org.jawroom.geometry.Length}), masses
 * kilograms in {@link java.math.BigDecimal}.
 *
 * <p><b>Blank is never zero.</b> A dimension that may be unknown is a {@link
 * org.jawroom.shop.Dimension}: known, {@code none} (the thing is not there) or blank (nobody has
 * measured it). Limits that may be left out because there is no end that way are intervals that
 * reach to {@link org.jawroom.geometry.Length#ENDLESS}.
 *
 * <p><b>Promised of every record:</b> sizes are not negative, minimum and maximum in order, names
 * non-empty. Whether the numbers are believable is for the reader's warnings to say.
 *
 * <p>This package knows nothing of files and nothing of solving.
 */
package org.jawroom.shop;
