package org.jawroom.report;

import static org.jawroom.fixture.outcome.Invented.CALIPER;
import static org.jawroom.fixture.outcome.Invented.UNRECORDED;
import static org.jawroom.fixture.outcome.Invented.known;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jawroom.advice.Advice;
import org.jawroom.advice.blank.Relation;
import org.jawroom.advice.remedy.Direction;
import org.jawroom.advice.remedy.RemedyKind;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/** An invented shop of 8 machines and 14 vises whose outcomes, drawn by lot, have every verdict. */
public final class SampleShop {
  private static final List<String> ALL =
      List.of("head", "tool changer", "nozzle", "sill", "column", "cover");
  private static final List<String> GUARDS =
      List.of(
          "rear cover", "door", "left guard", "coolant nozzle bracket, upper", "table", "hose arm");

  public final Shop shop;
  public final List<Outcome> outcomes = new ArrayList<>();

  /** Drawn apart, so that the outcomes stay as they are. */
  public final List<Advice> advice = new ArrayList<>();

  private final Random lot = new Random(7);
  private final Random adviceLot = new Random(11);

  public SampleShop() {
    shop = new Shop(Settings.DEFAULTS, machines(), vises(), List.of());
    for (Machine machine : shop.machines()) {
      for (Vise vise : shop.vises()) {
        outcomes.add(drawn(machine, vise));
        advice.add(advised(outcomes.get(outcomes.size() - 1)));
      }
    }
  }

  private static List<Machine> machines() {
    return List.of(
        machine("mill A", "", "900", "600", List.of("head"), CALIPER, List.of()),
        machine("mill B", "", "660", "406.4", List.of(), UNRECORDED, List.of()),
        machine("old knee mill by the window", "", "1066.8", "762", ALL, CALIPER, List.of()),
        machine("M4", "", "500", "350", List.of("head", "sill"), UNRECORDED, List.of()),
        machine(
            "vertical centre, hall 2, bay 11 (the one with the long table)",
            "",
            "1300",
            "1000",
            List.of("head", "tool changer", "nozzle"),
            CALIPER,
            List.of()),
        machine("toolroom mill", "", "700", "400", ALL, UNRECORDED, List.of()),
        machine("M7", "", "600", "400", List.of("column"), CALIPER, List.of()),
        machine("candidate 2", "", "850", "610", List.of(), UNRECORDED, List.of()));
  }

  private static List<Vise> vises() {
    List<Vise> vises = new ArrayList<>();
    String[] names = {
      "plain 100",
      "plain 150",
      "six inch",
      "six inch with swivel base",
      "centred 120",
      "v6",
      "long-opening vise 200 with hard plates",
      "low profile",
      "double station A",
      "double station B",
      "toolmaker's",
      "angle vise",
      "Schraubstock-Sonderausführung-mit-Aufspannplatte",
      "small one"
    };
    for (int i = 0; i < names.length; i++) {
      Dimension handle = i % 3 == 0 ? known("120") : Dimension.NONE;
      vises.add(
          vise(
              names[i],
              100 + 10 * (i % 6) + "",
              "0",
              120 + 17 * (i % 7) + ".4",
              handle,
              i % 4 == 0 ? UNRECORDED : CALIPER));
    }
    return vises;
  }

  private Outcome drawn(Machine machine, Vise vise) {
    int draw = lot.nextInt(20);
    if (draw < 2) {
      return new Made(machine, vise, Verdict.NO_MOUNT).load("120.5").room("310").done();
    }
    if (draw < 4) {
      return new Made(machine, vise, Verdict.UNKNOWN)
          .missing(
              draw == 2
                  ? new Column[] {Column.REAR_GAP}
                  : new Column[] {Column.REAR_GAP, Column.BASE_WIDTH, Column.SCREW_HEIGHT})
          .done();
    }
    if (draw == 4) {
      return new Made(machine, vise, Verdict.FITS)
          .at(Orientation.FRONT, "0", "-35")
          .play("100", "100", "3", "3")
          .usable("0", "150.07")
          .room("280")
          .load("200")
          .done();
    }
    if (draw == 5 && lot.nextBoolean()) {
      return new Made(machine, vise, Verdict.NO_PLACE).room("280").load("200").done();
    }
    return placed(machine, vise, draw);
  }

  private Outcome placed(Machine machine, Vise vise, int draw) {
    Verdict verdict =
        draw < 8
            ? Verdict.NO_PLACE
            : draw < 10 ? Verdict.MEASURE : draw < 13 ? Verdict.LIMITED : Verdict.FITS;
    boolean negative = verdict == Verdict.NO_PLACE || verdict == Verdict.MEASURE;
    int size = verdict == Verdict.MEASURE ? 15 : lot.nextInt(3) == 0 ? 30 : 400;
    String margin = new BigDecimal(lot.nextInt(size * 1000) + 1).movePointLeft(4).toPlainString();
    boolean loading = lot.nextInt(4) == 0;
    Made made =
        new Made(machine, vise, verdict)
            .limit(
                (negative ? "-" : "") + margin,
                GUARDS.get(lot.nextInt(GUARDS.size())),
                loading ? "handle" : lot.nextBoolean() ? "screw rear" : "moving jaw",
                lot.nextBoolean() ? Axis.X : Axis.Y,
                loading ? Situation.LOADING : Situation.CUTTING,
                JawEnd.values()[lot.nextInt(3)])
            .at(Orientation.values()[lot.nextInt(4)], "12.345", "-35")
            .overhang("3.2")
            .shortfall(lot.nextInt(5) == 0 ? "22.3" : "0")
            .room(lot.nextInt(12) == 0 ? "-12" : "310")
            .load(lot.nextInt(12) == 0 ? "-14.2" : "120");
    if (!negative) {
      made.play("40", "31.07", "3", lot.nextInt(6) == 0 ? "-0" : "3").nose("181.4");
    }
    return switch (verdict) {
      case LIMITED -> made.best("-4.2").usable("76.2", vise.opening().hi() / 2000000 + "").done();
      case FITS ->
          made.best(lot.nextInt(4) == 0 ? "1" + margin : margin).usable("0", "150.07").done();
      default -> made.best("-" + margin).done();
    };
  }

  private Advice advised(Outcome outcome) {
    Advised advised = new Advised(outcome);
    switch (outcome.verdict()) {
      case FITS -> together(advised, 1 + adviceLot.nextInt(6));
      case UNKNOWN -> outcome.missing().forEach(column -> blank(advised, column));
      case MEASURE -> {
        remedies(advised);
        together(advised, 0);
        advised.needs(
            adviceLot.nextBoolean() ? "0.27" : "", adviceLot.nextInt(3) > 0 ? "0.05" : "");
      }
      case LIMITED, NO_PLACE, NO_MOUNT -> {
        remedies(advised);
        together(advised, 0);
      }
    }
    return advised.done();
  }

  private void together(Advised advised, int count) {
    String[] positions = new String[count];
    for (int i = 0; i < count; i++) {
      positions[i] = new BigDecimal(-200 + 403 * i).movePointLeft(1).toPlainString();
    }
    advised.together(positions);
  }

  private void blank(Advised advised, Column column) {
    String limit = new BigDecimal(1000 + adviceLot.nextInt(9000)).movePointLeft(2).toPlainString();
    switch (column) {
      case REAR_GAP -> {
        int draw = adviceLot.nextInt(5);
        Relation relation =
            draw == 0 ? Relation.NEVER : draw == 1 ? Relation.ALWAYS : Relation.AT_LEAST;
        advised.blank(column, "", relation, relation == Relation.AT_LEAST ? limit : "");
      }
      case BASE_WIDTH -> advised.blank(column, "", Relation.AT_MOST, limit);
      default -> {}
    }
  }

  private void remedies(Advised advised) {
    for (RemedyKind kind : RemedyKind.values()) {
      if (adviceLot.nextInt(5) == 0) {
        String amount =
            new BigDecimal(adviceLot.nextInt(9000) + 1).movePointLeft(2).toPlainString();
        String then = new BigDecimal(adviceLot.nextInt(50)).movePointLeft(2).toPlainString();
        String guard = GUARDS.get(adviceLot.nextInt(GUARDS.size()));
        switch (kind) {
          case TURN -> advised.turn(Orientation.LEFT, then, guard);
          case MOVE -> advised.move("door", Direction.FRONT, amount, then);
          default -> advised.remedy(kind, kind.isMeasured() ? amount : "", then, guard);
        }
      }
    }
  }
}
