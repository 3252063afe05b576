package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataTextTest {
  @Test
  void of_everyKindOfValue_isOneLineOfJson() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("a", Arrays.asList(1L, null, -2, true));
    map.put("b", "say \"x\\y\"");
    assertEquals("{\"a\":[1,null,-2,true],\"b\":\"say \\\"x\\\\y\\\"\"}", DataText.of(map));
  }

  @Test
  void of_whatCouldEndTheElement_isEscaped() {
    assertEquals(
        "\"\\u003c/script\\u003e\\u003c!-- \\u0026amp; \\u2028\\u2029\"",
        DataText.of("</script><!-- &amp; \u2028\u2029"));
  }

  @Test
  void of_whatSteersOrReverses_isShownAsAQuestionMark() {
    assertEquals("[\"a?b\",\"c??d\"]", DataText.of(List.of("a\u202Eb", "c\n\u0007d")));
  }

  @Test
  void of_halfACharacter_isEscapedAndAWholeOneKept() {
    assertEquals("\"\\ud83d \uD83D\uDE00\"", DataText.of("\uD83D \uD83D\uDE00"));
  }
}
