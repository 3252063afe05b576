package org.jawroom.tables.vise;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.jawroom.shop.Shop;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The columns of a swivel base: the vises that follow from them, and what is refused. */
class SwivelTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0; 30; 45 | vise, vise @30, vise @-30, vise @45, vise @-45",
        "+30;-22.5 | vise, vise @30, vise @-22.5",
        "\u221230\u00b0; 30.0 deg | vise, vise @-30, vise @30",
        "0 | vise",
        "89.9 | vise, vise @89.9, vise @-89.9",
        "1 | vise, vise @1, vise @-1",
        "'' | vise",
      })
  void angles_makeAViseEach(String angles, String names) throws Exception {
    assertEquals(
        names,
        String.join(
            ", ",
            TestShop.in(folder)
                .machine("mill")
                .vise("vise", "swivel_angles", angles, "swivel_u", "40")
                .read()
                .shop()
                .orElseThrow()
                .vises()
                .stream()
                .map(Vise::name)
                .toList()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "90 | has 90, which is not below 90 degrees; write the angle from the jaws' square position",
        "30; -95 | has -95, which is not below 90 degrees; write the angle from the jaws' square position",
        "0.5 | has 0.5, which is below 1 degree; write 0 for square jaws",
        "22.25 | has 22.25; write an angle with at most one decimal",
        "30 45 | has no angle in \"30 45\"; write degrees with ; between, as 0; 30; 45",
        "30; | has no angle in \"\"; write degrees with ; between, as 0; 30; 45",
        "30 mm | has no angle in \"30 mm\"; write degrees with ; between, as 0; 30; 45",
        "22,5 | has a decimal comma; write 22.5, or set the setting decimal to comma",
        "none | is not allowed here; leave the cell blank if it is not known",
      })
  void angles_thatAreNone_areRefused(String angles, String message) throws Exception {
    assertEquals(
        List.of("vises.csv row 2, column swivel_angles: \"" + angles + "\" " + message),
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", angles, "swivel_u", "40")
            .faults());
  }

  @Test
  void angles_withoutPivot_areRefused() throws Exception {
    assertEquals(
        List.of(
            "vises.csv row 2, column swivel_u: is blank, but swivel_angles needs the place of the"
                + " pivot"),
        TestShop.in(folder).machine("mill").vise("vise", "swivel_angles", "30").faults());
  }

  @Test
  void radius_beyondTheBase_isRefused() throws Exception {
    assertEquals(
        List.of(
            "vises.csv row 2, column swivel_radius: \"81\" is more than base_width leaves room for:"
                + " base_width is across the flange, too",
            "vises.csv row 2, column swivel_radius: \"81\" is more than rear_reach leaves room for:"
                + " rear_reach goes to the end of the casting or of the flange, whichever is farther"),
        TestShop.in(folder)
            .machine("mill")
            .vise(
                "vise",
                "swivel_angles",
                "30",
                "swivel_u",
                "20",
                "swivel_radius",
                "81",
                "base_width",
                "160",
                "rear_reach",
                "at most 60",
                "front_reach",
                "101")
            .faults());
  }

  @Test
  void radius_thatJustFits_isTaken() throws Exception {
    assertEquals(
        List.of(),
        TestShop.in(folder)
            .machine("mill")
            .vise(
                "vise",
                "swivel_angles",
                "30",
                "swivel_u",
                "20",
                "swivel_radius",
                "80",
                "base_width",
                "160",
                "rear_reach",
                "60",
                "front_reach",
                "100")
            .faults());
  }

  @Test
  void name_ofATurnedVise_isRefusedForAnother() throws Exception {
    assertEquals(
        List.of(
            "vises.csv row 3, column vise: \"Vise @-30\" is what vise is called when it is turned; give"
                + " it another name"),
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", "30", "swivel_u", "40")
            .vise("Vise @-30")
            .faults());
  }

  @Test
  void everyFault_ofARow_isListed() throws Exception {
    assertEquals(
        2,
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", "90", "swivel_u", "40", "jaws", "three")
            .faults()
            .size());
  }

  @Test
  void nameOfATurnedVise_inStandingAndSets_isThatVise() throws Exception {
    Shop shop =
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", "30", "swivel_u", "40", "base_width", "200")
            .standing("vise", "Vise  @30")
            .set()
            .set("vise", "vise @-30")
            .read()
            .shop()
            .orElseThrow();
    assertEquals(
        List.of("vise @30"), shop.standing().stream().map(one -> one.vise().name()).toList());
    assertEquals(
        List.of("vise", "vise @-30"),
        shop.sets().get(0).members().stream().map(one -> one.vise().name()).toList());
  }

  @Test
  void angleThatTheViseHasNot_isNoViseOfTheShop() throws Exception {
    assertEquals(
        List.of(
            "sets.csv row 2, column vise: \"vise @45\" is no vise of this shop; write vise, or"
                + " list that angle in its swivel_angles",
            "standing.csv row 2, column vise: \"vise @31\" is no vise of this shop; write vise, or"
                + " list that angle in its swivel_angles"),
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", "+35", "swivel_u", "40")
            .standing("vise", "vise @31")
            .set("vise", "vise @45")
            .faults()
            .stream()
            .sorted()
            .toList());
  }

  /** Mounts and parts are those of the row. */
  @Test
  void nameOfATurnedVise_inRowsOfTheRow_isRefused() throws Exception {
    assertEquals(
        List.of(
            "vise_parts.csv row 2, column vise: \"vise @30\" is no vise of this shop; write vise, or"
                + " list that angle in its swivel_angles"),
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", "30", "swivel_u", "40")
            .part("vise @30", "stop")
            .faults());
  }

  @Test
  void unsoundRow_hasItsNamesAllTheSame() throws Exception {
    assertEquals(
        1,
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", "30", "swivel_u", "40", "jaws", "three")
            .standing("vise", "vise @30")
            .set("vise", "vise @-30")
            .faults()
            .size());
  }

  @Test
  void twoRowsOfOneName_areRefusedOnce() throws Exception {
    assertEquals(
        1,
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", "30", "swivel_u", "40")
            .vise("vise", "swivel_angles", "30", "swivel_u", "40")
            .faults()
            .size());
  }

  @Test
  void checkOfATurnedVise_isRefused() throws Exception {
    assertEquals(
        List.of(
            "checks.csv row 2, column vise: \"vise @30\" is turned on its swivel base, where a gap"
                + " says nothing about single readings; measure with the jaws square and write vise"),
        TestShop.in(folder)
            .machine("mill")
            .vise("vise", "swivel_angles", "30", "swivel_u", "40")
            .check("vise", "vise @30")
            .faults());
  }
}
