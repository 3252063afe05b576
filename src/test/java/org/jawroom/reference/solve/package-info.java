/**
 * The answers of the second solver: {@link org.jawroom.reference.solve.ReferencePairing} (a
 * pairing), {@link org.jawroom.reference.solve.ReferenceJob} (a job on a pairing), {@link
 * org.jawroom.reference.solve.RefSet} (different vises on one table), {@link
 * org.jawroom.reference.solve.RefStanding} (a vise where it stands), {@link
 * org.jawroom.reference.solve.RefCounts} (vises of a kind on one table), {@link
 * org.jawroom.reference.solve.RefRemedies} (single changes).
 */
package org.jawroom.reference.solve;
