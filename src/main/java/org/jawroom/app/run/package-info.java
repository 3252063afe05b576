/**
 * Solves the pairings of a shop on threads and hands them to the reports in input order. The
 * results do not depend on the number of threads.
 */
package org.jawroom.app.run;
