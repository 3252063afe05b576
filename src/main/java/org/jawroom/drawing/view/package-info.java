/**
 * What is drawn of a pairing: the views, the scene of boxes, slots and travel as marks, the gap
 * that limits it, tapes, and the inks. Lengths are those of the model.
 */
package org.jawroom.drawing.view;
