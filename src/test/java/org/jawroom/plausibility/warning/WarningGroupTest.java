package org.jawroom.plausibility.warning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WarningGroupTest {
  private static Warning machine(Seriousness seriousness, String name, String text) {
    return Warning.machine(seriousness, name, "column", text);
  }

  private static List<String> lines(List<Warning> warnings) {
    return WarningGroup.of(warnings).stream().flatMap(group -> group.lines().stream()).toList();
  }

  @Test
  void of_equalWarnings_areOneThatNamesTheRows() {
    assertEquals(
        List.of("machines, a; c, column: same", "machines, b, column: other"),
        lines(
            List.of(
                machine(Seriousness.WRONG, "a", "same"),
                machine(Seriousness.WRONG, "b", "other"),
                machine(Seriousness.WRONG, "c", "same"))));
  }

  @Test
  void of_equalTextsAboutDifferentTables_stayApart() {
    assertEquals(
        2,
        WarningGroup.of(
                List.of(
                    machine(Seriousness.UNSEEN, "a", "same"),
                    Warning.vise(Seriousness.UNSEEN, "a", "column", "same")))
            .size());
  }

  @Test
  void of_severalAboutTheSameRow_areOneGroupMostSeriousFirst() {
    List<WarningGroup> groups =
        WarningGroup.of(
            List.of(
                machine(Seriousness.UNUSUAL, "a", "odd"),
                machine(Seriousness.BLANK, "b", "blank"),
                machine(Seriousness.WRONG, "a", "wrong")));
    assertEquals(
        List.of("machines a", "machines b"), groups.stream().map(WarningGroup::heading).toList());
    assertEquals(
        List.of("wrong", "odd"), groups.get(0).warnings().stream().map(Warning::text).toList());
  }

  @Test
  void heading_ofVeryManyRows_namesTheFirstTwenty() {
    List<Warning> many =
        IntStream.rangeClosed(1, 22)
            .mapToObj(i -> machine(Seriousness.WRONG, "m" + i, "same"))
            .toList();
    String heading = WarningGroup.of(many).get(0).heading();
    assertEquals("machines m1, m2", heading.substring(0, 15));
    assertEquals("m20 and 2 more", heading.substring(heading.length() - 14));
  }
}
