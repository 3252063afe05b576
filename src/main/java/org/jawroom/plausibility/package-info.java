/**
 * What looks wrong in a shop that was read without a fault.
 *
 * <p><b>In:</b> a {@link org.jawroom.shop.Shop}, or one machine and one vise. <b>Out:</b> {@link
 * org.jawroom.plausibility.warning.Warning}s in the order of the tables, from {@link
 * org.jawroom.plausibility.Warnings}: each with its table, row and column, what looks wrong and
 * what to do about it, in one line, and its {@link org.jawroom.plausibility.warning.Seriousness}.
 * {@link org.jawroom.plausibility.warning.WarningGroup} merges equal ones and sorts them for
 * people.
 *
 * <p><b>A warning is not a fault.</b> Whatever gets a warning is accepted, since it can be true,
 * and no warning changes a verdict. Every warning can be acted on: by measuring, or by filling a
 * column that ends it. What the reports state of every pairing anyhow, as a large overhang on one
 * machine, gets none.
 *
 * <p><b>The solver decides.</b> Which columns a pairing needs, where guards and slots stand and how
 * far a base hangs over are computed by {@link org.jawroom.clearance} and {@link
 * org.jawroom.placement.bolting}, so that a warning and a verdict cannot differ. The limits of a
 * plausible size are in this package; published ones are in {@link org.jawroom.standards}.
 *
 * <p>Pure: no files, no clock, no libraries. Readers of tables do not know this package.
 */
package org.jawroom.plausibility;
