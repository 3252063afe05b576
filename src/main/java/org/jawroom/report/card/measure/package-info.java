/**
 * The figures of a card that a setter measures or sets: ranges of the tape, checkpoints with their
 * gauges, limits of travel, nose and opening. Every rounding is toward less room.
 */
package org.jawroom.report.card.measure;
