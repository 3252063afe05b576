/**
 * How a view is drawn on a {@code Graphics2D}: its projection to points (y down), the marks of the
 * scene, dimension lines and tapes, and labels kept off each other.
 */
package org.jawroom.drawing.paint;
