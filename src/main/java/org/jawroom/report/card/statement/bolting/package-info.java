/**
 * What holds the vise on the table, as a card states it: slot, T-nut, bolt to order and torque, the
 * inch stud in its place, and strap clamps. Published numbers come from {@link
 * org.jawroom.standards}; common practice is marked as such.
 */
package org.jawroom.report.card.statement.bolting;
