package org.jawroom.plausibility.warning;

/** How much a warning matters, the most serious first. */
public enum Seriousness {
  /** A number contradicts another or is no usual size: verdicts may be wrong. */
  WRONG,
  /** Something may be hit that the tables do not name, or that stands closer than they state. */
  UNSEEN,
  /** An open reading may leave verdicts unknown; which ones, only solving them shows. */
  OPEN,
  /** A blank leaves numbers open, but no verdict. */
  BLANK,
  /** Unusual; harmless if true. */
  UNUSUAL
}
