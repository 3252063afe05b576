/**
 * The command line: {@link org.jawroom.cli.Jawroom} lists the commands of {@code command}, which
 * share the options of {@code option}.
 */
package org.jawroom.cli;
