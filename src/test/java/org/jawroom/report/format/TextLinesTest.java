package org.jawroom.report.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextLinesTest {

  @ParameterizedTest
  @CsvSource({
    "'', 1",
    "abcde, 1",
    "abcdef, 2",
    "ab cd, 1",
    "abc de, 2",
    "abcdefghijk, 3",
    "abcdefg hij, 3",
    "a abcdefg, 3",
    "ab-cd, 1",
    "abc-def, 2",
    "abc-de-f, 2",
    "abcd-e-fghi, 3",
    "abcde fg, 2",
    "ab cd efg, 2"
  })
  void count_ofLinesOfFive(String text, int lines) {
    assertEquals(lines, TextLines.count(text, 5));
  }

  @Test
  void count_ofTextWithLinesOfItsOwn_addsThem() {
    assertEquals(3, TextLines.count("ab\ncde fgh", 5));
  }
}
