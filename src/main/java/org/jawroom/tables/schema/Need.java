package org.jawroom.tables.schema;

/** The treatment of a blank cell. */
public enum Need {
  /** The column must exist and be filled. */
  REQUIRED,
  /** May be blank and is then unknown, never zero. */
  UNKNOWN_IF_BLANK,
  /** May be blank and then has a default. */
  OPTIONAL
}
