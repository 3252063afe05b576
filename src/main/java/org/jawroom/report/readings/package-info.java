/** Which columns of the tables a margin is computed from. */
package org.jawroom.report.readings;
