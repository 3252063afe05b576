/**
 * A machine as measured: its table and slots, its axes, and the guards round it.
 *
 * <p>Lengths are half-nanometres in the table frame with every axis at mid-travel. A taped gap is a
 * {@link org.jawroom.shop.machine.Guard} that fills everything beyond its face.
 */
package org.jawroom.shop.machine;
