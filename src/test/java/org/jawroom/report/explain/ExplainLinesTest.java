package org.jawroom.report.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ExplainLinesTest {
  @Test
  void item_tooLong_isCutAfterAWholeWord() {
    assertEquals(List.of("  fixed jaw to …"), items("fixed jaw to head, nose low"));
  }

  @Test
  void item_tooLongWithRoomForTheSign_keepsItsLine() {
    assertEquals(List.of("  fixed jaw to it, …"), items("fixed jaw to it, nose low"));
  }

  @Test
  void item_oneWordThatIsTooLong_isCutThrough() {
    assertEquals(List.of("  abcdefghijklmnop …"), items("abcdefghijklmnopqrstuvwxyz"));
  }

  private static List<String> items(String text) {
    ExplainLines lines = new ExplainLines(20);
    lines.item(text, 1);
    return lines.all();
  }
}
