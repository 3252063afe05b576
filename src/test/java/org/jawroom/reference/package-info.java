/**
 * A second, slow and simple solver, written from the clearance model alone. It shares no code with
 * the production solver except the input records, so that agreement is meaningful.
 *
 * <p>Entry points: {@link org.jawroom.reference.ReferencePairing} (solves a pairing), {@link
 * org.jawroom.reference.random.RandomShops} (seeded inputs), {@link
 * org.jawroom.reference.random.ShopCsv} (inputs as text), {@link
 * org.jawroom.reference.ReferenceJob} (solves a job on a pairing), {@link
 * org.jawroom.reference.RefSet} (different vises on one table), {@link
 * org.jawroom.reference.MovingTwin} (simulates all motion), {@link
 * org.jawroom.reference.OverlayFreeSpace} (free space by polygon overlay).
 *
 * <p>Lengths are half-nanometres.
 */
package org.jawroom.reference;
