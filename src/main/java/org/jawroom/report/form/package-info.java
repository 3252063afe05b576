/**
 * The form on which readings are written down at the machine or the vise: PDF pages of A4, each
 * with its sketch, the readings in the order in which they are taped, boxes to fill in, and what
 * goes wrong. It knows neither tables nor the solver: {@link org.jawroom.report.form.FormPage} says
 * what a page asks.
 */
package org.jawroom.report.form;
