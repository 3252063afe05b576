/**
 * Mutable drafts of machines, vises, jobs and settings, for tests that change one field of many.
 */
package org.jawroom.reference.draft;
