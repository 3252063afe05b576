/**
 * A second, slow and simple solver, written from the clearance model alone. It shares no code with
 * the production solver except the input records, so that agreement is meaningful.
 *
 * <p>Its rooms: {@code space} lengths and areas · {@code model} a pairing as parts, guards and
 * mounts · {@code solve} the answers · {@code proof} what holds the second solver itself · {@code
 * agree} the production solver compared with it · {@code random} seeded inputs.
 *
 * <p>Lengths are half-nanometres.
 */
package org.jawroom.reference;
