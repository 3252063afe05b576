package org.jawroom.cli.option;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.SettingColumns;
import picocli.CommandLine.IModelTransformer;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * Adds one option for each setting to a command, made from the setting's descriptor. An option
 * overrides the table.
 */
public final class SettingOptions implements IModelTransformer {

  /** After every option of a command's own. */
  private static final int FIRST = 100;

  private static final String HEADING =
      "%nSettings, with their defaults (an option overrides the table settings):%n";

  @Override
  public CommandSpec transform(CommandSpec command) {
    ArgGroupSpec.Builder group =
        ArgGroupSpec.builder().heading(HEADING).validate(false).order(FIRST);
    List<ColumnSpec> settings = SettingColumns.OPTIONS;
    for (int i = 0; i < settings.size(); i++) {
      group.addArg(option(settings.get(i), FIRST + i));
    }
    command.addArgGroup(group.build());
    // With all settings the synopsis takes ten lines.
    command.usageMessage().abbreviateSynopsis(true);
    return command;
  }

  /**
   * The settings given as options of a parsed command, name to text.
   *
   * @throws ParameterException if one is given twice: the library does not refuse it within a group
   */
  public static Map<String, String> given(CommandSpec command) {
    ParseResult parsed = command.commandLine().getParseResult();
    Map<String, String> given = new LinkedHashMap<>();
    for (ColumnSpec setting : SettingColumns.OPTIONS) {
      OptionSpec option = parsed.matchedOption(name(setting));
      if (option == null) {
        continue;
      }
      if (option.stringValues().size() > 1) {
        throw new ParameterException(
            command.commandLine(), "option " + name(setting) + " is given twice; give it once");
      }
      given.put(setting.name(), option.getValue());
    }
    return given;
  }

  private static OptionSpec option(ColumnSpec setting, int order) {
    return OptionSpec.builder(name(setting))
        .type(String.class)
        .arity("1")
        .order(order)
        .paramLabel(setting.words().isEmpty() ? "LENGTH" : String.join("|", setting.words()))
        // A description is a format.
        .description(
            (setting.help() + " Default: " + setting.blankMeans() + ".").replace("%", "%%"))
        .build();
  }

  private static String name(ColumnSpec setting) {
    return "--" + setting.name().replace('_', '-');
  }
}
