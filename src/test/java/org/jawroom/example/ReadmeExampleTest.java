package org.jawroom.example;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jawroom.app.output.Version;
import org.junit.jupiter.api.Test;

/** The README's section for those who use jawroom as a library. */
class ReadmeExampleTest {
  private static final Path FILE = Path.of("src/test/java/org/jawroom/example/ReadAndSolve.java");

  @Test
  void readme_showsTheExampleAsItIsCompiled() throws Exception {
    assertEquals(List.of(Files.readString(FILE)), found("```java\n(.*?)```\n"));
  }

  @Test
  void readme_namesTheVersionOfTheBuild() throws Exception {
    assertEquals(List.of(Version.number()), found("<version>(.*?)</version>"));
  }

  private static List<String> found(String pattern) throws Exception {
    Matcher matcher =
        Pattern.compile(pattern, Pattern.DOTALL).matcher(Files.readString(Path.of("README.md")));
    return matcher.results().map(result -> result.group(1)).toList();
  }
}
