package org.jawroom.report.card;

import static org.jawroom.geometry.Length.MM;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingTable;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.card.statement.Weight;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.value.When;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/**
 * A low and a tall vise side by side under one head. Beds 30 and 60, jaws 20 above them, and 6 to
 * clear: 56 over one, 86 over the other.
 */
class TableNoseTest {
  /** The bolts fill their holes. */
  private static final Settings SETTINGS = Settings.DEFAULTS.toBuilder().tapRoom(0).build();

  private static final Provenance EXACT = new Provenance(0, false, "", "");
  private static final Interval UPWARD = Interval.of(0, Length.ENDLESS);

  private final Machine machine = machine();
  private final Vise low = vise("low", 30 * MM);
  private final Vise tall = vise("tall", 60 * MM);

  @Test
  void nose_onEachCardOfASet_clearsAllItsVises() {
    SetOutcome set = set();
    assertEquals(SetOutcome.Fits.YES, set.fits());
    assertEquals("low", set.stands().get(0).vise().name());
    assertEquals(nose(" 86", ", for all vises here", "56"), limit(set, 0));
    assertEquals(nose(" 86", ", for all vises here", "26"), limit(set, 1));
  }

  @Test
  void nose_onCardsOfVisesWhereTheyStand_clearsAllOnTheTable() {
    Standing left = standing(0, 0);
    Standing right = standing(1, 0);
    assertEquals(
        nose(" 86", ", for all vises here", "56"),
        limit(StandingTable.solve(SETTINGS, left, List.of(right))));
    List<StandingOutcome> both = StandingTable.solve(SETTINGS, List.of(left, right));
    assertEquals(nose(" 86", ", for all vises here", "56"), limit(both.get(0)));
    assertEquals(nose(" 86", ", for all vises here", "26"), limit(both.get(1)));
    assertEquals(List.of(tall), card(both.get(0)).others());
    assertEquals(1, card(both.get(0)).beside().size());
    assertEquals(Optional.empty(), card(both.get(0)).range());
  }

  @Test
  void nose_onACardOfAViseAlone_clearsThatAlone() {
    assertEquals(
        nose(" 56", "", "26"), limit(StandingTable.solve(SETTINGS, standing(0, 0), List.of())));
    assertTrue(card(StandingTable.solve(SETTINGS, standing(0, 0), List.of())).range().isPresent());
    Standing elsewhere = new Standing(other(), tall, standing(1, 0).place(), "base bolts", EXACT);
    assertEquals(
        nose(" 56", "", "26"),
        limit(StandingTable.solve(SETTINGS, standing(0, 0), List.of(elsewhere))));
  }

  /** 30 mm behind the slot; bolts of 14 in holes of 14 hold nowhere but over it. */
  @Test
  void nose_besideAViseOffTheSlots_isNotKnownOverThat() {
    Item nose = limit(StandingTable.solve(SETTINGS, standing(0, 0), List.of(standing(1, 30 * MM))));
    assertEquals(
        new Item(
            "Nose:",
            nose(" 56", "", "26").text()
                + " Over tall (off the slots, as measured) nobody knows: jog and look."),
        nose);
  }

  /** The head reaches to 6 mm from the base of the tall one, which may stand 1 mm nearer. */
  @Test
  void nose_besideAViseMeasuredRoughly_clearsItWhereverItMayStand() {
    Standing right = standing(1, 0);
    Interval left = Interval.of(-Length.ENDLESS, right.x() - 30 * MM - 6 * MM);
    Machine mill = mill(new Box(left, Interval.ALL, UPWARD));

    assertEquals(nose(" 56", ", for all vises here", "26"), limit(mill, right, EXACT));
    assertEquals(
        nose(" 66", ", for all vises here", "36"),
        limit(mill, right, new Provenance(MM, false, "", "")));
  }

  /** The same of the tall one's own card. */
  @Test
  void nose_overAViseMeasuredRoughly_clearsItWhereverItMayStand() {
    Standing right = standing(1, 0);
    Interval left = Interval.of(-Length.ENDLESS, right.x() - 30 * MM - 6 * MM);
    Machine mill = mill(new Box(left, Interval.ALL, UPWARD));

    assertEquals(
        new Item("Nose:", "not below 0 mm above the table top."),
        limit(StandingTable.solve(SETTINGS, on(mill, right, EXACT), List.of())));
    Provenance rough = new Provenance(MM, false, "", "");
    assertEquals(
        nose(" 66", "", "6"),
        limit(StandingTable.solve(SETTINGS, on(mill, right, rough), List.of())));
  }

  /** The head reaches the jaws of the tall one open by more than 34. */
  @Test
  void nose_besideAViseWhoseJawsCannotOpenFully_clearsThemFullyOpen() {
    Standing right = standing(1, 0);
    Box beyond =
        new Box(
            Interval.of(right.x(), Length.ENDLESS),
            Interval.of(-Length.ENDLESS, right.y() - 50 * MM),
            UPWARD);
    MachineDraft draft = railed(right);
    draft.guards.add(head(beyond));
    Machine mill = draft.build();

    assertEquals(
        StandingOutcome.Says.LIMITED,
        StandingTable.solve(SETTINGS, on(mill, right, EXACT), List.of()).says());
    assertEquals(nose(" 86", ", for all vises here", "56"), limit(mill, right, EXACT));
  }

  @Test
  void card_besideTwoOfAKindOffTheSlots_namesItOnce() {
    Standing off = standing(1, 30 * MM);
    CardFacts beside =
        facts(
            card(
                StandingTable.solve(SETTINGS, standing(0, 0), List.of(off, standing(1, 40 * MM)))));
    assertEquals(
        1, beside.alarms().stream().filter(one -> one.contains("tall off the slots")).count());
    assertTrue(
        limit(card(StandingTable.solve(SETTINGS, standing(0, 0), List.of(off, off))))
            .text()
            .contains(" Over tall (off the slots"));
  }

  @Test
  void card_besideAViseThatMustNotOpenFully_saysSo() {
    Standing right = standing(1, 0);
    MachineDraft draft = railed(right);
    draft.maxLoad = Optional.empty();
    CardFacts beside = facts(card(outcome(draft.build(), right, EXACT)));

    assertEquals("fits, with a caveat", beside.stamp());
    assertEquals(
        List.of("Mind, on the same table: tall limited: keep open 0 to 30."), beside.alarms());
  }

  @Test
  void weight_ofVisesWhereTheyStand_isThatOfAll() {
    CardSubject card = card(StandingTable.solve(SETTINGS, standing(0, 0), List.of(standing(1, 0))));
    assertEquals(
        "All 2 together are too heavy for this table by 10 kg: do not set them down.",
        new Weight(PeopleUnit.MM, card.outcome(), card.others()).tooHeavy().orElseThrow());
  }

  private SetOutcome set() {
    return SetPairing.solve(
        SETTINGS,
        machine,
        new ViseSet(
            "set", List.of(new ViseSet.Member(low, 1), new ViseSet.Member(tall, 1)), List.of()));
  }

  /** A vise where it stands in the set, or that far behind. */
  private Standing standing(int index, long behind) {
    SetOutcome.Stand stand = set().stands().get(index);
    Recommendation there = stand.there().place();
    TapedPlace place =
        TapedPlace.of(machine, stand.vise(), there.handleTo(), there.x(), there.y() + behind);
    return new Standing(machine, stand.vise(), place, "base bolts", EXACT);
  }

  private static Machine machine() {
    return draft().build();
  }

  private static Machine other() {
    MachineDraft other = draft();
    other.name = "other mill";
    return other.build();
  }

  private static MachineDraft draft() {
    MachineDraft machine = new MachineDraft();
    machine.tableLength = 400 * MM;
    machine.tableWidth = 300 * MM;
    machine.slotCount = 1;
    machine.slotWidth = Dimension.of(14 * MM);
    machine.noseMin = Dimension.of(0);
    machine.noseMax = Dimension.of(500 * MM);
    machine.guards.add(head(new Box(Interval.ALL, Interval.ALL, UPWARD)));
    machine.maxLoad = Optional.of(BigDecimal.valueOf(30));
    return machine;
  }

  private static Guard head(Box box) {
    return Guards.box("head", "", new Axes(false, false, true), When.CUTTING, box);
  }

  /** A mill with that head. */
  private static Machine mill(Box head) {
    MachineDraft draft = draft();
    draft.guards.clear();
    draft.guards.add(head(head));
    return draft.build();
  }

  /** Without a head, with a rail that the jaws of the tall vise hit from 30 of 40 on. */
  private static MachineDraft railed(Standing tall) {
    Box rail =
        new Box(
            Interval.of(tall.x(), Length.ENDLESS),
            Interval.of(-Length.ENDLESS, tall.y() - 46 * MM),
            Interval.of(70 * MM, 80 * MM));
    MachineDraft draft = draft();
    draft.guards.clear();
    draft.guards.add(Guards.box("rail", "", new Axes(false, false, false), When.ALWAYS, rail));
    return draft;
  }

  private static Standing on(Machine mill, Standing standing, Provenance provenance) {
    return new Standing(mill, standing.vise(), standing.place(), standing.mount(), provenance);
  }

  /** The low vise beside another on that mill. */
  private StandingOutcome outcome(Machine mill, Standing other, Provenance provenance) {
    return StandingTable.solve(
        SETTINGS, on(mill, standing(0, 0), EXACT), List.of(on(mill, other, provenance)));
  }

  private Item limit(Machine mill, Standing other, Provenance provenance) {
    return limit(outcome(mill, other, provenance));
  }

  private static Item nose(String lowest, String over, String stickOut) {
    return new Item(
        "Nose:",
        "not below"
            + lowest
            + " mm above the table top"
            + over
            + "; a tool that touches the vise's bed sticks out "
            + stickOut
            + " at least.");
  }

  private static Item limit(SetOutcome set, int at) {
    return limit(CardSubject.ofSet(SETTINGS, set, at, List.of()));
  }

  private static CardSubject card(StandingOutcome standing) {
    return CardSubject.of(standing, List.of()).orElseThrow();
  }

  private static Item limit(StandingOutcome standing) {
    return limit(card(standing));
  }

  private static CardFacts facts(CardSubject card) {
    return CardFacts.of(card, Explained.run(PeopleUnit.MM));
  }

  private static Item limit(CardSubject card) {
    return facts(card).limits().stream()
        .filter(item -> item.label().equals("Nose:"))
        .findFirst()
        .orElseThrow();
  }

  private static Vise vise(String name, long bed) {
    ViseDraft draft = new ViseDraft();
    draft.name = name;
    draft.jawWidth = 40 * MM;
    draft.jawHeight = 20 * MM;
    draft.bedHeight = bed;
    draft.boltGrip = OptionalLong.of(10 * MM);
    draft.openingMax = 40 * MM;
    draft.baseWidth = Dimension.of(60 * MM);
    draft.rearReach = Dimension.of(30 * MM);
    draft.frontReach = Dimension.of(70 * MM);
    draft.fixedJaw = Dimension.of(10 * MM);
    draft.movingJaw = Dimension.of(10 * MM);
    draft.boltSpacing = Dimension.of(20 * MM);
    draft.boltU = Dimension.of(20 * MM);
    draft.holeU = Dimension.of(14 * MM);
    draft.holeV = Dimension.of(14 * MM);
    draft.turns = EnumSet.of(Orientation.FRONT);
    draft.mass = Optional.of(BigDecimal.valueOf(20));
    return draft.build();
  }
}
