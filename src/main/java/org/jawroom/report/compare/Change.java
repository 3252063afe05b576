package org.jawroom.report.compare;

/** How a pairing changed between two runs, in the order of listing. */
enum Change {
  WORSE("worse", "Got worse"),
  BETTER("better", "Got better"),
  /** It was {@code unknown} and no longer is, whatever the new verdict. */
  NOW_KNOWN("now known", "Now known"),
  /** Neither better nor worse. */
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

  /** The code in the CSV. */
  String code() {
    return code;
  }

  String heading() {
    return heading;
  }

  /** Combines two criteria in order: the second counts only if the first is unchanged. */
  Change orElse(Change other) {
    return this == UNCHANGED ? other : this;
  }

  /** Combines two criteria of equal weight; neither better nor worse if they contradict. */
  Change and(Change other) {
    return this == UNCHANGED || this == other ? other : other == UNCHANGED ? this : OTHERWISE;
  }

  /** A larger value is better. */
  static Change from(long old, long now) {
    return now < old ? WORSE : now > old ? BETTER : UNCHANGED;
  }
}
