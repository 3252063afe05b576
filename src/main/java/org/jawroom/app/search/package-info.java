/** Searches for a plan within a time limit, and reads the plan to keep. */
package org.jawroom.app.search;
