/**
 * What a card states in words, apart from measures and bolts: tapping it square, the part of a job,
 * weight, steps, cautions and origin. Trade facts stand with their source, or as common practice.
 */
package org.jawroom.report.card.statement;
