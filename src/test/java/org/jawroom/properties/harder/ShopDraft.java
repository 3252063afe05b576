package org.jawroom.properties.harder;

import java.util.List;
import java.util.OptionalLong;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.SettingsDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/**
 * A shop of one machine and one vise, to be changed. Its load position is always given outright.
 */
final class ShopDraft {
  final SettingsDraft settings;
  final MachineDraft mill;
  final ViseDraft vise;

  private ShopDraft(SettingsDraft settings, MachineDraft mill, ViseDraft vise) {
    this.settings = settings;
    this.mill = mill;
    this.vise = vise;
  }

  static ShopDraft of(Shop shop) {
    return new ShopDraft(
        SettingsDraft.of(shop.settings()), of(shop.machines().get(0)), of(shop.vises().get(0)));
  }

  /** A copy that shares nothing that can change. */
  ShopDraft copy() {
    return of(shop());
  }

  Shop shop() {
    return new Shop(settings.build(), List.of(mill.build()), List.of(vise.build()), List.of());
  }

  Outcome solve() {
    return Pairing.solve(settings.build(), mill.build(), vise.build());
  }

  private static MachineDraft of(Machine machine) {
    MachineDraft mill = new MachineDraft();
    mill.name = machine.name();
    mill.tableMoves = machine.tableMoves();
    mill.tableLength = machine.tableLength();
    mill.tableWidth = machine.tableWidth();
    mill.travelX = machine.travelX();
    mill.travelY = machine.travelY();
    mill.spindleX = machine.spindleX();
    mill.spindleY = machine.spindleY();
    Slots slots = machine.slots();
    mill.slotDirection = slots.direction();
    mill.slotCount = slots.count();
    mill.slotWidth = slots.width();
    mill.slotPitch = slots.pitch();
    mill.slotFirst = slots.first();
    mill.slotPositions = slots.positions();
    mill.slotLength = slots.length();
    mill.ledges = machine.ledges();
    mill.frontGap = machine.gap(Side.FRONT);
    mill.rearGap = machine.gap(Side.REAR);
    mill.leftGap = machine.gap(Side.LEFT);
    mill.rightGap = machine.gap(Side.RIGHT);
    mill.noseMin = machine.noseMin();
    mill.noseMax = machine.noseMax();
    mill.maxLoad = machine.maxLoad();
    mill.loadX = OptionalLong.of(machine.loadX());
    mill.loadY = OptionalLong.of(machine.loadY());
    mill.turns = machine.turns();
    mill.tolerance = machine.provenance().tolerance();
    mill.guards.addAll(machine.guardRows());
    return mill;
  }

  private static ViseDraft of(Vise vise) {
    ViseDraft draft = new ViseDraft();
    draft.name = vise.name();
    draft.simple = vise.simple();
    draft.both = vise.jaws().both();
    draft.jawWidth = vise.jaws().width();
    draft.jawHeight = vise.jaws().height();
    draft.platesWidth = OptionalLong.of(vise.jaws().platesWidth());
    draft.platesHeight = OptionalLong.of(vise.jaws().platesHeight());
    draft.bedHeight = vise.base().bedHeight();
    draft.openingMin = vise.opening().lo();
    draft.openingMax = vise.opening().hi();
    draft.baseWidth = vise.base().width();
    draft.rearReach = vise.base().rearReach();
    draft.frontReach = vise.base().frontReach();
    draft.fixedJaw = vise.jaws().fixedThickness();
    draft.movingJaw = vise.jaws().movingThickness();
    draft.rearClosed = vise.screw().rear().closed();
    draft.rearOpen = vise.screw().rear().open();
    draft.frontClosed = vise.screw().front().closed();
    draft.frontOpen = vise.screw().front().open();
    draft.screwHeight = vise.screw().height();
    draft.screwDiameter = vise.screw().diameter();
    draft.handleRadius = vise.handle().radius();
    draft.handleDepth = vise.handle().depth();
    draft.handleOn = vise.handle().onWhileCutting();
    draft.fullSwing = vise.handle().fullSwing();
    draft.turns = vise.turns();
    draft.boltGrip = vise.boltGrip();
    draft.mass = vise.mass();
    draft.tolerance = vise.provenance().tolerance();
    draft.parts.addAll(vise.parts());
    bolts(vise, draft);
    return draft;
  }

  private static void bolts(Vise vise, ViseDraft draft) {
    draft.boltSpacing = Dimension.NONE;
    for (Mount mount : vise.mounts()) {
      if (mount.own()) {
        Dimension v = mount.bolts().get(1).v();
        draft.boltSpacing = v.isKnown() ? Dimension.of(2 * v.length()) : Dimension.BLANK;
        draft.boltU = mount.bolts().get(1).u();
        draft.holeU = mount.bolts().get(1).holeU();
        draft.holeV = mount.bolts().get(1).holeV();
      } else {
        draft.mounts.add(mount);
      }
    }
  }
}
