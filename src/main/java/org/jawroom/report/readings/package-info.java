/** Which columns of the tables a margin is computed from, and which blanks to measure first. */
package org.jawroom.report.readings;
