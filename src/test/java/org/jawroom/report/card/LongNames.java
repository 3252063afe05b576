package org.jawroom.report.card;

import static org.jawroom.geometry.Length.MM;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.VisePart;

/** A pairing whose every name is as long as a table lets it be, and which has much to say. */
final class LongNames {
  private static final Box EVERYWHERE = new Box(Interval.ALL, Interval.ALL, Interval.ALL);

  private final String letters;

  LongNames(String letters) {
    this.letters = letters;
  }

  CardSubject explained() {
    MachineDraft machine = new MachineDraft();
    machine.name = name("machine");
    machine.tableLength = 800 * MM;
    machine.tableWidth = 300 * MM;
    machine.travelX = 500 * MM;
    machine.travelY = 250 * MM;
    machine.slotWidth = Dimension.of(16 * MM);
    machine.slotPitch = Dimension.of(80 * MM);
    machine.noseMin = Dimension.of(100 * MM);
    machine.noseMax = Dimension.of(500 * MM);
    machine.tolerance = MM;
    machine.maxLoad = Optional.of(BigDecimal.ONE);
    for (Side side : Side.values()) {
      machine.guards.add(
          Guards.beside(
              name("guard " + side.word()),
              "other",
              Axes.NONE,
              When.ALWAYS,
              side,
              Dimension.of(40 * MM),
              Guards.EVERYWHERE));
    }
    ViseDraft vise = new ViseDraft();
    vise.name = name("vise");
    vise.simple = false;
    vise.jawWidth = 100 * MM;
    vise.jawHeight = 40 * MM;
    vise.bedHeight = 60 * MM;
    vise.openingMax = 100 * MM;
    vise.boltSpacing = Dimension.NONE;
    vise.mass = Optional.of(BigDecimal.valueOf(1234.5));
    vise.parts.add(part("one", -60, 60));
    vise.parts.add(part("two", -50, 70));
    vise.mounts.add(
        new Mount(name("mount"), false, List.of(bolt(-60), bolt(60), bolt(-50), bolt(50))));
    return CardSubject.of(Settings.DEFAULTS, machine.build(), vise.build(), List.of())
        .orElseThrow();
  }

  private VisePart part(String what, long from, long to) {
    Interval u = Interval.of(from * MM, to * MM);
    return new VisePart(
        name(what),
        When.ALWAYS,
        u,
        u,
        Interval.around(0, 50 * MM),
        Interval.of(0, 100 * MM),
        OptionalLong.empty());
  }

  private static Bolt bolt(long v) {
    return new Bolt(
        Dimension.of(0), Dimension.of(v * MM), Dimension.of(40 * MM), Dimension.of(18 * MM));
  }

  /** A hundred letters, what it is first, so that no two are the same. */
  private String name(String what) {
    String all = letters + what + letters.repeat(100);
    int end = all.offsetByCodePoints(0, 100);
    return all.substring(0, end);
  }
}
