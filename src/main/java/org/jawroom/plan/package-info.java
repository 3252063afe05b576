/** The best plan for a cell. */
package org.jawroom.plan;
