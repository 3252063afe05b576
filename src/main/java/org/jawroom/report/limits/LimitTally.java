package org.jawroom.report.limits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Counts how often each part meets each guard first, pairing by pairing, with the margins there.
 */
public final class LimitTally {

  /** What limits a pairing. */
  private record Meeting(String guard, String part) {}

  /**
   * A guard and a part with the pairings that they limit.
   *
   * @param margins of these pairings; never none
   */
  public record Limited(String guard, String part, Margins margins) {

    /** As every report words it: {@code door · screw front}. */
    public String words() {
      return guard + " · " + part;
    }
  }

  private final Map<Meeting, Margins> meetings = new LinkedHashMap<>();
  private long total;

  /** Adds a pairing of that margin which {@code guard} limits, met by {@code part}. */
  public void add(String guard, String part, long margin) {
    meetings.computeIfAbsent(new Meeting(guard, part), key -> new Margins()).add(margin);
    total++;
  }

  /** The number of pairings added. */
  public long total() {
    return total;
  }

  /** What limits most pairings first; of equals what was added first. */
  public List<Limited> rows() {
    List<Limited> rows = new ArrayList<>();
    meetings.forEach(
        (meeting, margins) -> rows.add(new Limited(meeting.guard(), meeting.part(), margins)));
    rows.sort(Comparator.comparingInt((Limited row) -> row.margins().count()).reversed());
    return rows;
  }
}
