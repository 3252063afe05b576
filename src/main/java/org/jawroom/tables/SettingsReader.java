package org.jawroom.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.jawroom.geometry.Length;
import org.jawroom.shop.Settings;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.CellText;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.Row;
import org.jawroom.tables.row.Rows;
import org.jawroom.tables.row.size.KnownSizes;
import org.jawroom.tables.row.size.SizeCheck;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.SettingColumns;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.Cell;
import org.jawroom.tables.source.grid.NumberLook;

/** Parses the table of settings, and the options that override it. */
final class SettingsReader {

  /** One text given for a setting, by a row or an option. */
  private record Given(
      String text, boolean pointAlways, NumberLook look, String origin, Consumer<String> fault) {}

  private final Ledger ledger;
  private final Map<String, List<Given>> given = new LinkedHashMap<>();
  private final Map<String, SettingUsed> used = new LinkedHashMap<>();

  SettingsReader(Ledger ledger) {
    this.ledger = ledger;
  }

  /**
   * Returns the settings, with defaults where no valid value is given. Also sets the unit of bare
   * numbers, the decimal sign and the unit for people in the ledger.
   */
  Settings read(Map<String, String> options) {
    Rows.of(TableSpec.SETTINGS, ledger).forEach(this::addRow);
    options.forEach(this::addOption);
    Settings.Builder builder = Settings.builder();
    SettingColumns.SETTINGS.forEach(setting -> read(setting, builder));
    return builder.build();
  }

  /**
   * Reads one setting into the ledger or the builder. The ledger's own come first among the
   * descriptors, since every other setting may be a bare number.
   */
  private void read(ColumnSpec setting, Settings.Builder builder) {
    switch (setting.name()) {
      case "unit" -> ledger.unit = word(setting).flatMap(Unit::named).orElseThrow();
      case "show" -> ledger.show = word(setting).flatMap(Unit::named);
      case "decimal" -> ledger.comma = word(setting).filter("comma"::equals).isPresent();
      case "clearance" -> length(setting).ifPresent(builder::clearance);
      case "hand_room" -> length(setting).ifPresent(builder::handRoom);
      case "spacing" -> length(setting).ifPresent(builder::spacing);
      case "clamp_room" -> length(setting).ifPresent(builder::clampRoom);
      case "tap_room" -> length(setting).ifPresent(builder::tapRoom);
      case "smaller_threads" -> builder.smallerThreads(word(setting).equals(Optional.of("yes")));
      case "shortest_tool" -> builder.shortestTool(length(setting));
      case "jaw_play" -> length(setting).ifPresent(builder::jawPlay);
      case "load_room" -> length(setting).ifPresent(builder::loadRoom);
      case "comfort" -> length(setting).ifPresent(builder::comfort);
      case "least_opening" -> length(setting).ifPresent(builder::leastOpening);
      case "max_overhang" -> builder.maxOverhang(length(setting));
      default -> throw new IllegalStateException("setting " + setting.name() + " is not read");
    }
  }

  /** In the order of the specification; call it after {@link #read}. */
  List<SettingUsed> used() {
    return List.copyOf(used.values());
  }

  private void addRow(Row row) {
    Optional<String> written = row.name("setting");
    Optional<ColumnSpec> setting = written.flatMap(SettingColumns::setting);
    if (written.isPresent() && setting.isEmpty()) {
      row.fault("setting", "is not a setting" + hint(written.get()));
    }
    if (setting.isEmpty()) {
      return;
    }
    String origin = row.origin() + " row " + row.number();
    List<Given> before = given.computeIfAbsent(setting.get().name(), none -> new ArrayList<>());
    if (!before.isEmpty()) {
      row.fault("setting", "is already set in " + before.get(0).origin());
      return;
    }
    row.cell("value").map(cell -> given(cell, origin, row)).ifPresent(before::add);
  }

  private static Given given(Cell cell, String origin, Row row) {
    boolean pointAlways = cell.kind() == Cell.Kind.NUMBER;
    Consumer<String> fault = message -> row.fault("value", message);
    return new Given(cell.text(), pointAlways, cell.look(), origin, fault);
  }

  private void addOption(String name, String text) {
    Optional<ColumnSpec> setting = SettingColumns.setting(name);
    if (setting.isPresent() && !SettingColumns.OPTIONS.contains(setting.get())) {
      throw new IllegalArgumentException(
          "the setting " + setting.get().name() + " cannot be overridden by an option");
    }
    String shown = setting.map(ColumnSpec::name).orElse(name).replace('_', '-');
    String origin = "option --" + shown;
    Consumer<String> fault =
        message -> ledger.faults.add(TableSpec.SETTINGS, origin, text, message);
    if (setting.isEmpty()) {
      ledger.faults.add(TableSpec.SETTINGS, origin, "", "is not a setting" + hint(name));
    } else if (CellText.trimmed(text).isEmpty()) {
      fault.accept("is blank; an option needs a value");
    } else {
      given
          .computeIfAbsent(setting.get().name(), none -> new ArrayList<>())
          .add(new Given(text, false, NumberLook.PLAIN, origin, fault));
    }
  }

  private String hint(String name) {
    List<String> known = SettingColumns.SETTINGS.stream().map(ColumnSpec::name).toList();
    return ledger.hint(ColumnSpec.normal(name), () -> known);
  }

  /** The last valid value given, or else the default; empty if there is none. */
  private Optional<String> word(ColumnSpec spec) {
    String name = spec.name();
    Optional<String> value = spec.standard();
    used.put(name, new SettingUsed(name, value.orElse(spec.blankMeans()), SettingUsed.BY_DEFAULT));
    for (Given one : given.getOrDefault(name, List.of())) {
      Optional<String> word = wordIn(spec, one.text());
      if (word.isEmpty()) {
        String words =
            spec.words().isEmpty() ? spec.kind().words() : String.join(" or ", spec.words());
        one.fault().accept("is not possible here; write " + words);
      } else {
        value = word;
        used.put(name, new SettingUsed(name, word.get(), one.origin()));
      }
    }
    return value;
  }

  private static Optional<String> wordIn(ColumnSpec spec, String text) {
    if (spec.kind() == CellKind.UNIT) {
      return Unit.named(text)
          .map(Unit::sign)
          .filter(sign -> spec.words().isEmpty() || spec.words().contains(sign));
    }
    String wanted = ColumnSpec.normal(text);
    return spec.words().stream().filter(wanted::equals).findFirst();
  }

  private OptionalLong length(ColumnSpec spec) {
    String name = spec.name();
    OptionalLong value = OptionalLong.empty();
    if (spec.standard().isPresent()) {
      String standard = spec.standard().get();
      value = parse(spec, new Given(standard, true, NumberLook.PLAIN, "", message -> {}));
    }
    String text = value.isPresent() ? Lengths.inMillimetres(value.getAsLong()) : spec.blankMeans();
    used.put(name, new SettingUsed(name, text, SettingUsed.BY_DEFAULT));
    for (Given one : given.getOrDefault(name, List.of())) {
      OptionalLong read = parse(spec, one);
      if (read.isPresent()) {
        value = read;
        used.put(
            name, new SettingUsed(name, Lengths.inMillimetres(read.getAsLong()), one.origin()));
      }
    }
    return value;
  }

  private OptionalLong parse(ColumnSpec spec, Given one) {
    try {
      String trouble = one.look().trouble(spec.kind(), ledger.unit);
      if (!trouble.isEmpty()) {
        throw new BadCell(trouble);
      }
      boolean comma = ledger.comma && !one.pointAlways();
      Lengths.Read read = Lengths.parse(one.text(), ledger.unit, comma);
      long length = SizeCheck.checked(spec, read.value());
      KnownSizes.check(TableSpec.SETTINGS, spec.name(), read, comma);
      if (spec.name().equals("least_opening") && length < Settings.OPENING_GRAIN) {
        throw new BadCell("is less than " + Lengths.inMillimetres(Length.MM / 100));
      }
      return OptionalLong.of(length);
    } catch (BadCell e) {
      one.fault().accept(e.getMessage());
      return OptionalLong.empty();
    }
  }
}
