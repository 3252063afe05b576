package org.jawroom.tables.schema;

/** What becomes of a blank cell. */
public enum Need {
  /** Must be there and filled. */
  REQUIRED,
  /** May be blank and is then unknown, never zero. */
  UNKNOWN_IF_BLANK,
  /** May be blank and then has a default. */
  OPTIONAL
}
