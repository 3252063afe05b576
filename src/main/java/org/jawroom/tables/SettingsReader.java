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
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.SettingColumns;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.Cell;
import org.jawroom.tables.source.NumberLook;

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
    // These come first, since every other setting may be a bare number.
    ledger.unit = word("unit").flatMap(Unit::named).orElseThrow();
    ledger.show = word("show").flatMap(Unit::named);
    ledger.comma = word("decimal").filter("comma"::equals).isPresent();
    long clearance = length("clearance").getAsLong();
    Settings.Builder builder = Settings.builder().clearance(clearance);
    builder.handRoom(length("hand_room").getAsLong());
    builder.spacing(length("spacing").orElse(clearance));
    builder.clampRoom(length("clamp_room").getAsLong());
    builder.tapRoom(length("tap_room").getAsLong());
    builder.smallerThreads(word("smaller_threads").filter("yes"::equals).isPresent());
    builder.shortestTool(length("shortest_tool"));
    builder.jawPlay(length("jaw_play").getAsLong());
    builder.loadRoom(length("load_room").getAsLong());
    builder.comfort(length("comfort").getAsLong());
    builder.leastOpening(length("least_opening").getAsLong());
    builder.maxOverhang(length("max_overhang"));
    return builder.build();
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
    if (ColumnSpec.normal(name).equals("unit")) {
      throw new IllegalArgumentException(
          "the unit of the tables cannot be overridden by an option");
    }
    Optional<ColumnSpec> setting = SettingColumns.setting(name);
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
  private Optional<String> word(String name) {
    ColumnSpec spec = SettingColumns.setting(name).orElseThrow();
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

  private OptionalLong length(String name) {
    ColumnSpec spec = SettingColumns.setting(name).orElseThrow();
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
