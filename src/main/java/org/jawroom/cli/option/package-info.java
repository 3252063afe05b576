/** What several commands share: options for settings, machines, sets, threads and paths. */
package org.jawroom.cli.option;
