/**
 * What holds the second solver itself: the examples of the model's page, shops worked by hand, a
 * simulation of all motion ({@link org.jawroom.reference.proof.MovingTwin}) and polygon overlay
 * ({@link org.jawroom.reference.proof.OverlayFreeSpace}).
 */
package org.jawroom.reference.proof;
