package org.jawroom.cli.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jawroom.cli.CommandRun;
import org.jawroom.cli.Jawroom;
import org.jawroom.launch.Main;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.SettingColumns;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The options of every command that reads tables are the settings, whichever there are. */
class SettingOptionsTest {

  private static final String HEADING = "Settings, with their defaults";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  static Stream<ColumnSpec> settings() {
    return SettingColumns.SETTINGS.stream().filter(spec -> !spec.name().equals("unit"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"matrix", "page", "plan", "explain", "draw", "card", "assess", "check", "compare"})
  void everySettingButUnit_isAnOption_aloneOrAmongAllCommands(String command) {
    List<String> expected = settings().map(SettingOptionsTest::option).toList();
    for (String[] args : List.of(new String[] {command}, new String[] {})) {
      CommandSpec spec = Jawroom.of(args).getSubcommands().get(command).getCommandSpec();

      List<String> options =
          spec.argGroups().get(0).options().stream()
              .map(CommandLine.Model.OptionSpec::longestName)
              .toList();

      assertEquals(expected, options);
    }
  }

  @Test
  void template_whichReadsNoTables_hasNone() {
    CommandSpec spec =
        Jawroom.of(new String[] {"template"}).getSubcommands().get("template").getCommandSpec();
    assertEquals(List.of(), spec.argGroups());
  }

  @ParameterizedTest
  @MethodSource("settings")
  void help_listsTheSettingWithItsDefaultUnderTheHeading(ColumnSpec setting) {
    assertEquals(0, run("matrix", "--help"));

    String help = out.toString();
    String settings = help.substring(help.indexOf(HEADING)).replaceAll("\\s+", " ");
    String label = setting.words().isEmpty() ? "LENGTH" : String.join("|", setting.words());
    String text = setting.help() + " Default: " + setting.blankMeans() + ".";
    assertTrue(settings.contains(option(setting) + "=" + label + " " + text), settings);
  }

  @ParameterizedTest
  @MethodSource("settings")
  void option_withAnImpossibleValue_isRefusedUnderItsName(ColumnSpec setting) {
    for (String name : List.of(option(setting), "--" + setting.name())) {
      for (String value : List.of("a bit", "", " ")) {
        err.getBuffer().setLength(0);
        assertEquals(2, run("check", CommandRun.TABLES.toString(), name, value));
        assertTrue(err.toString().startsWith("option " + option(setting) + ": "), err.toString());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("settings")
  void option_givenTwice_isRefused(ColumnSpec setting) {
    String value = setting.words().isEmpty() ? "7 mm" : setting.words().get(0);
    String[] args = {
      "check", CommandRun.TABLES.toString(), option(setting), value, option(setting) + "=" + value
    };

    assertEquals(2, run(args));

    assertEquals(
        List.of(
            "option " + option(setting) + " is given twice; give it once",
            "See 'jawroom check --help'."),
        err.toString().lines().toList());
  }

  @ParameterizedTest
  @MethodSource("settings")
  void option_withoutItsValue_isRefused(ColumnSpec setting) {
    assertEquals(2, run("check", CommandRun.TABLES.toString(), option(setting)));
    assertTrue(err.toString().startsWith("Missing required parameter"), err.toString());
  }

  @Test
  void options_allAtOnce_areTaken() {
    List<String> args = new ArrayList<>(List.of("explain"));
    // The demo has decimal points.
    settings()
        .filter(setting -> !setting.name().equals("decimal"))
        .forEach(
            setting -> {
              args.add(option(setting));
              args.add(setting.words().isEmpty() ? "7 mm" : setting.words().get(1));
            });
    args.addAll(List.of(CommandRun.TABLES.toString(), "knee mill", "plain 125"));

    assertEquals(0, run(args.toArray(String[]::new)), err::toString);
  }

  private int run(String... args) {
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private static String option(ColumnSpec setting) {
    return "--" + setting.name().replace('_', '-');
  }
}
