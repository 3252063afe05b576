/**
 * What several commands share: options for settings, machines, threads and the time limit, checks
 * of destinations, and how large a result may become ({@link org.jawroom.cli.option.Foreseen}).
 */
package org.jawroom.cli.option;
