/** Sketches of a mill, a vise and a gap in which every dimension is named by its column. */
package org.jawroom.tables.template.sketch;
