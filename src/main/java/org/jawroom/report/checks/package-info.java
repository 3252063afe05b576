/** What the checks on the machine say: three files for programs and a page of text. */
package org.jawroom.report.checks;
