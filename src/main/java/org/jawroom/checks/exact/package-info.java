/**
 * Exact rational arithmetic and linear programming over it: no length is rounded before a result is
 * printed. All bounds are closed.
 */
package org.jawroom.checks.exact;
