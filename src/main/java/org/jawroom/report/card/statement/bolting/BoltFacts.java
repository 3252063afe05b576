package org.jawroom.report.card.statement.bolting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.ThreadWords;
import org.jawroom.shop.vise.Vise;
import org.jawroom.standards.TNut;
import org.jawroom.standards.TSlot;
import org.jawroom.standards.Tightening;

/**
 * The bolting hardware: slot, T-nut, bolt length to order, torque. The computed bolts are metric,
 * so their figures are in mm; where people read inches, inch studs follow.
 */
public record BoltFacts(PeopleUnit unit, Outcome outcome, Recommendation place) {
  private static final PeopleUnit MM = PeopleUnit.MM;

  /** Pound-feet per newton metre, in ten-thousandths. */
  private static final long POUND_FEET = 7375;

  public List<Item> items() {
    long slot = outcome.machine().slots().width().length();
    TNut nut = nut(slot);
    List<Item> items = new ArrayList<>();
    items.add(new Item("T-nuts:", tNut(slot, nut)));
    smaller(nut).ifPresent(items::add);
    items.add(new Item("Length under the head:", length(slot, threaded(nut))));
    items.add(new Item("Torque:", torque(threaded(nut))));
    if (unit == PeopleUnit.INCH) {
      items.addAll(
          new InchBoltFacts(place.thread().orElseThrow(), slot, place.slots().size())
              .items(vise().boltGrip(), vise().provenance().tolerance()));
    }
    return items;
  }

  /** The greatest height of the hold-down hardware. */
  public Item height() {
    return new Item(
        "Bolts:",
        "head, washer and end no more than "
            + both(2 * place.thread().orElseThrow(), Rounding.DOWN)
            + " above the "
            + (vise().boltGrip().isPresent() ? "flange." : "vise's bed."));
  }

  /** The nut of the slot, with the thread that the vise's holes pass. */
  private TNut threaded(TNut nut) {
    int thread = (int) (place.thread().orElseThrow() / Length.MM);
    return new TNut(nut.slot(), thread, nut.baseWidth(), nut.height(), nut.baseHeight());
  }

  private Optional<Item> smaller(TNut nut) {
    return threaded(nut).equals(nut)
        ? Optional.empty()
        : Optional.of(
            new Item(
                "Smaller thread:",
                "the vise's holes do not pass the slot's own M"
                    + nut.thread()
                    + ": nuts for this slot tapped "
                    + ThreadWords.of(place.thread())
                    + ", or stepped studs M"
                    + nut.thread()
                    + " to "
                    + ThreadWords.of(place.thread())
                    + "."));
  }

  /** The widest nut of the series that is not wider than the slot. */
  static TNut nut(long slot) {
    long thread = TNut.boltFor(slot).orElseThrow();
    return TNut.DIN_508.stream()
        .filter(nut -> nut.thread() * Length.MM == thread)
        .findFirst()
        .orElseThrow();
  }

  private String tNut(long slot, TNut nut) {
    String width = both(slot, Rounding.NEAREST);
    int bolts = place.slots().size();
    String what =
        bolts
            + " × DIN 508, slot "
            + nut.slot()
            + ", "
            + ThreadWords.of(place.thread())
            + " (base "
            + tenths(nut.baseWidth())
            + " wide, "
            + tenths(nut.height())
            + " mm high), in slots "
            + width
            + " wide; bolts or studs and washers of class 8.8.";
    return TSlot.metric(slot).isPresent()
        ? what
        : what
            + " Not a slot of ISO 299: the next smaller nut is taken. For a nut with another thread"
            + " the bolts' room is not computed.";
  }

  private String length(long slot, TNut nut) {
    BoltLength length =
        BoltLength.of(nut, vise().boltGrip(), vise().provenance().tolerance(), slot);
    if (!length.possible()) {
      return "the flange is known to ± "
          + mm(vise().provenance().tolerance(), Rounding.UP)
          + " only: measure it before you order.";
    }
    String flange = vise().boltGrip().isPresent() ? "" : "flange + ";
    String range =
        flange
            + "t + "
            + both(length.addLeast(), Rounding.UP)
            + " to "
            + flange
            + "t + "
            + both(length.addMost(), Rounding.DOWN);
    String t = ", t: how deep the nut's top, pulled up, is below the table.";
    String blank =
        vise().boltGrip().isPresent() ? "" : " bolt_grip is blank: measure the flange too.";
    String order = vise().boltGrip().isPresent() ? order(length, nut) : "";
    return range
        + t
        + blank
        + order
        + " Engage "
        + nut.thread()
        + " mm or more; never out under the nut, it breaks the slot's lip: try"
        + " by hand.";
  }

  private static String order(BoltLength length, TNut nut) {
    List<BoltLength.Choice> choices = length.choices();
    return choices.isEmpty()
        ? ""
        : " Order M"
            + nut.thread()
            + " × "
            + choices.stream()
                .map(
                    choice ->
                        choice.millimetres()
                            + " for t "
                            + figure(choice.depth().lo())
                            + (choice.depth().length() == 0
                                ? ""
                                : " to " + figure(choice.depth().hi())))
                .collect(Collectors.joining(", "))
            + " (slots to ISO 299); between, cut to length.";
  }

  String torque(TNut nut) {
    OptionalLong torque = Tightening.startingTorque(nut.thread());
    if (torque.isEmpty()) {
      return "no published value at hand for M" + nut.thread() + ": take the bolt maker's.";
    }
    long newtonMetres = torque.getAsLong();
    String feet =
        unit == PeopleUnit.INCH ? " (" + newtonMetres * POUND_FEET / 10_000 + " lbf ft)" : "";
    return newtonMetres
        + " N m"
        + feet
        + " at most, to start with: K F d, K 0.15 (thread oiled), F 75 % of the proof load of class"
        + " 8.8 (ISO 898-1). A slot's lip may bear less: the machine maker's limit comes first.";
  }

  private Vise vise() {
    return outcome.vise();
  }

  /** In millimetres, beside inches where people read these. */
  private String both(long length, Rounding rounding) {
    String metric = mm(length, rounding);
    return unit == PeopleUnit.MM ? metric : unit.fine(length, rounding) + " in (" + metric + ")";
  }

  private static String mm(long length, Rounding rounding) {
    return figure(length, rounding) + " mm";
  }

  private static String figure(long length) {
    return figure(length, Rounding.NEAREST);
  }

  private static String figure(long length, Rounding rounding) {
    return MM.brief(length, rounding);
  }

  private static String tenths(int tenths) {
    return MM.brief(tenths * (Length.MM / 10), Rounding.NEAREST);
  }
}
