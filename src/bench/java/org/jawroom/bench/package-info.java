/**
 * How fast the solver is, beside yardsticks timed in the same run: see {@code src/bench/README.md}.
 */
package org.jawroom.bench;
