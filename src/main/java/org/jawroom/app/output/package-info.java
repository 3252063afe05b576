/** What a run prints beside its reports: standard output, progress, version and exit status. */
package org.jawroom.app.output;
