/** The CSV reports for programs: RFC 4180, UTF-8, millimetres to 0.001. */
package org.jawroom.report.csv;
