package org.jawroom.report.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonTextTest {

  @Test
  void of_textThatNeedsIt_isEscapedAfterRfc8259() {
    assertEquals("\"a\\\"b\\\\c\\u000a\\u0000\"\n", JsonText.of("a\"b\\c\n\0"));
    assertEquals("\"Größe 6½ ≥\"\n", JsonText.of("Größe 6½ ≥"));
  }

  @Test
  void of_textThatCouldSteerATerminal_isEscaped() {
    assertEquals("\"\\u001b[2J\\u009b\\u202e\"\n", JsonText.of("\u001b[2J\u009b\u202e"));
  }

  @Test
  void of_halfASurrogatePair_isStillValidUtf8() {
    assertEquals("\"\\ud83d\"\n", JsonText.of("\ud83d"));
  }

  @Test
  void of_mapsAndLists_keepTheirOrder() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("z", new JsonText.Figure("1.500"));
    map.put("a", Arrays.asList(null, List.of()));
    assertEquals("{\n  \"z\": 1.500,\n  \"a\": [null, []]\n}\n", JsonText.of(map));
  }
}
