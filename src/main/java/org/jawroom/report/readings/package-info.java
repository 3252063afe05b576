/** Which columns of the tables a margin is made of, and which blanks are worth measuring first. */
package org.jawroom.report.readings;
