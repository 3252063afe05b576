/**
 * The contents of the tables as validated records: machines with their guards, vises with their
 * parts and mounts, jobs and settings.
 *
 * <p><b>Unit.</b> Lengths are half-nanometres ({@link org.jawroom.geometry.Length}), masses
 * kilograms in {@link java.math.BigDecimal}.
 *
 * <p><b>Blank is never zero.</b> A dimension that may be unknown is a {@link
 * org.jawroom.shop.value.Dimension}: known, {@code none} (declared absent) or blank (not measured).
 * An optional limit that is left out is {@link org.jawroom.geometry.Length#ENDLESS}.
 *
 * <p><b>Invariants of every record:</b> sizes are not negative, minimum and maximum are in order,
 * names are not empty. Implausible numbers are left to the warnings of the reader.
 *
 * <p>This package does not depend on files or on the solver.
 */
package org.jawroom.shop;
