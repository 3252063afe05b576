/**
 * A second solver, slow and plain, written from the clearance model alone and sharing no code with
 * the production one but the records that hold the inputs. It exists so that agreement means
 * something.
 *
 * <p>Entry points: {@link org.jawroom.reference.ReferencePairing} (the answer), {@link
 * org.jawroom.reference.RandomShops} (seeded inputs), {@link org.jawroom.reference.ShopCsv} (inputs
 * as text), {@link org.jawroom.reference.ReferenceJob} (a job on a pairing), {@link
 * org.jawroom.reference.MovingTwin} (moves everything and looks), {@link
 * org.jawroom.reference.OverlayFreeSpace} (the same free space by polygon overlay).
 *
 * <p>Lengths are half-nanometres, as everywhere.
 */
package org.jawroom.reference;
