/**
 * Where a vise can be bolted, the best place for it, and the verdict on a machine × vise pairing.
 *
 * <p><b>In:</b> settings, a machine and a vise ({@link org.jawroom.shop}). <b>Out:</b> an {@link
 * org.jawroom.placement.Outcome}, from which the CSV, the workbook and every other report read;
 * they compute nothing themselves. The one entry is {@link org.jawroom.placement.Pairing#solve}.
 *
 * <p><b>Jobs.</b> {@link org.jawroom.placement.JobPairing} says of a job on a pairing whether the
 * vise holds it there: the same model over fewer openings, with the part in the jaws and within the
 * spindle's reach, and beside that the {@link org.jawroom.placement.JobReason}s that hang on no
 * place. The height of a tool over the part is held against the setting's clearance alone, no
 * tolerance taken off; margins have theirs.
 *
 * <p><b>Pure.</b> No files, no clock, no shared state, no libraries: the same inputs give the same
 * outcome on any thread.
 *
 * <p><b>Exact.</b> Positions lie on the lattice of half-nanometres. Since every bound is a whole
 * number of them, a placement with margin ≥ t exists on the lattice exactly if one exists at all.
 */
package org.jawroom.placement;
