package org.jawroom.tables.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jawroom.fixture.TestShop;
import org.jawroom.shop.Evidence;
import org.jawroom.shop.Settings;
import org.jawroom.tables.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The descriptors of the settings agree with the record of the shop and with the reader. */
class SettingsTableTest {

  /** How tables are read and what people see: no part of the shop. */
  private static final List<String> NOTATION = List.of("unit", "show", "decimal");

  @TempDir private Path folder;

  @Test
  void descriptors_areTheNotationThenTheComponentsOfTheRecord() {
    List<String> names = new ArrayList<>(NOTATION);
    for (RecordComponent component : Settings.class.getRecordComponents()) {
      // What was found on the machines is no setting of the table.
      if (component.getType() != Evidence.class) {
        names.add(columnName(component));
      }
    }
    assertEquals(names, SettingColumns.SETTINGS.stream().map(ColumnSpec::name).toList());
  }

  static Stream<ColumnSpec> settingsOfTheShop() {
    return SettingColumns.SETTINGS.stream().filter(spec -> !NOTATION.contains(spec.name()));
  }

  @ParameterizedTest
  @MethodSource("settingsOfTheShop")
  void defaultOfTheDescriptor_written_isTheDefaultOfTheShop(ColumnSpec spec) throws Exception {
    String written = spec.standard().orElse("");

    assertEquals(Settings.DEFAULTS, read(TestShop.sound(folder).setting(spec.name(), written)));
  }

  @ParameterizedTest
  @MethodSource("settingsOfTheShop")
  void value_inARowOrAnOption_changesThatComponentAlone(ColumnSpec spec) throws Exception {
    String value = spec.kind() == CellKind.WORD ? spec.words().get(1) : "37 mm";
    // Unless it is given, spacing is the same as clearance.
    List<String> expected =
        spec.name().equals("clearance") ? List.of("clearance", "spacing") : List.of(spec.name());

    Settings row = read(TestShop.sound(folder).setting(spec.name(), value));
    Settings option =
        read(TestShop.sound(folder).setting(spec.name(), "").option(spec.name(), value));

    assertEquals(expected, changed(row));
    assertEquals(row, option);
  }

  private static Settings read(TestShop shop) throws Exception {
    Reading reading = shop.read();
    assertEquals(List.of(), reading.faults());
    return reading.shop().orElseThrow().settings();
  }

  private static List<String> changed(Settings settings) {
    return Arrays.stream(Settings.class.getRecordComponents())
        .filter(
            component -> !value(component, settings).equals(value(component, Settings.DEFAULTS)))
        .map(SettingsTableTest::columnName)
        .toList();
  }

  private static Object value(RecordComponent component, Settings settings) {
    try {
      return component.getAccessor().invoke(settings);
    } catch (ReflectiveOperationException impossible) {
      throw new AssertionError(impossible);
    }
  }

  /** {@code hand_room} for {@code handRoom}. */
  private static String columnName(RecordComponent component) {
    return component.getName().replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }
}
