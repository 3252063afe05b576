/** Spans, rectangles, fractions and free cells of the second solver, apart from the geometry. */
package org.jawroom.reference.space;
