/**
 * What is drawn of a pairing and how: the views with their projection, the scene of boxes, slots
 * and travel, dimension lines and tapes, labels kept off each other, and the inks. In points, y
 * down.
 */
package org.jawroom.drawing.view;
