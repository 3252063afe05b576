package org.jawroom.report.compare;

/** What became of a pairing between two runs, in the order in which people read of it. */
enum Change {
  WORSE("worse", "Got worse"),
  BETTER("better", "Got better"),
  /** It was {@code unknown} and is not any more, whatever it turned out to be. */
  NOW_KNOWN("now known", "Now known"),
  /** Neither better nor worse can be said of it. */
  OTHERWISE("otherwise", "Changed otherwise"),
  UNCHANGED("unchanged", "Unchanged"),
  ONLY_OLD("only old", "Only in the old"),
  ONLY_NEW("only new", "Only in the new");

  private final String code;
  private final String heading;

  Change(String code, String heading) {
    this.code = code;
    this.heading = heading;
  }

  /** What the CSV bears. */
  String code() {
    return code;
  }

  String heading() {
    return heading;
  }

  /** What two signs in a row come to: the second counts only where the first tells nothing. */
  Change orElse(Change other) {
    return this == UNCHANGED ? other : this;
  }

  /** What two signs of equal weight come to: neither, where they point opposite ways. */
  Change and(Change other) {
    return this == UNCHANGED || this == other ? other : other == UNCHANGED ? this : OTHERWISE;
  }

  /** More is better. */
  static Change from(long old, long now) {
    return now < old ? WORSE : now > old ? BETTER : UNCHANGED;
  }
}
