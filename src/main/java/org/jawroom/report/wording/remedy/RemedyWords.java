package org.jawroom.report.wording.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.advice.ToleranceNeeded;
import org.jawroom.advice.remedy.Remedy;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** Remedies in words, each with what to watch for. */
public record RemedyWords(PeopleUnit unit) {

  /** One end of travel: where the table, or on some machines the spindle, stands there. */
  private enum End {
    TABLE_FRONT(Axis.Y, "front", "back"),
    TABLE_BACK(Axis.Y, "back", "front"),
    TABLE_LEFT(Axis.X, "left", "right"),
    TABLE_RIGHT(Axis.X, "right", "left");

    private final Axis axis;
    private final String table;

    /**
     * Where the spindle stands relative to the table; it is also the side of the table within reach
     * at this end.
     */
    private final String spindle;

    End(Axis axis, String table, String spindle) {
      this.axis = axis;
      this.table = table;
      this.spindle = spindle;
    }

    /** Distance from the spindle's loading position to this end of its reach. */
    long fromLoading(Machine machine) {
      long loadY = machine.loadY() - machine.spindleY();
      long loadX = machine.loadX() - machine.spindleX();
      return switch (this) {
        case TABLE_FRONT -> machine.reachY() - loadY;
        case TABLE_BACK -> machine.reachY() + loadY;
        case TABLE_LEFT -> machine.reachX() - loadX;
        case TABLE_RIGHT -> machine.reachX() + loadX;
      };
    }
  }

  /** Describes the change. */
  public String change(Machine machine, Remedy remedy) {
    return switch (remedy.kind()) {
      case HANDLE_OFF -> "take the handle off before cutting";
      case UPPER_SWING -> "swing the handle back and forth above the screw only";
      case TURN -> "bolt it with the handle to the " + remedy.turn().word();
      case TRAVEL_FRONT -> stop(machine, End.TABLE_FRONT, remedy);
      case TRAVEL_BACK -> stop(machine, End.TABLE_BACK, remedy);
      case TRAVEL_LEFT -> stop(machine, End.TABLE_LEFT, remedy);
      case TRAVEL_RIGHT -> stop(machine, End.TABLE_RIGHT, remedy);
      case RAISE -> "stand the vise on a riser plate of " + amount(remedy);
      case MOVE -> move(remedy);
      case CLEARANCE -> "! ask for " + amount(remedy) + " less clearance everywhere";
    };
  }

  /** What to watch for after the change; may be empty. */
  public String mind(Outcome outcome, Remedy remedy) {
    Machine machine = outcome.machine();
    return switch (remedy.kind()) {
      case HANDLE_OFF, UPPER_SWING -> "";
      case TURN -> leftOut(machine, outcome.vise(), remedy.turn());
      case TRAVEL_FRONT -> shorter(machine, End.TABLE_FRONT, remedy);
      case TRAVEL_BACK -> shorter(machine, End.TABLE_BACK, remedy);
      case TRAVEL_LEFT -> shorter(machine, End.TABLE_LEFT, remedy);
      case TRAVEL_RIGHT -> shorter(machine, End.TABLE_RIGHT, remedy);
      case RAISE -> raised(outcome, remedy);
      case MOVE -> "then measure it again";
      case CLEARANCE -> "less clearance than you asked for: only if you can answer for it";
    };
  }

  /** What to do about a limited pairing without changing anything. */
  public String keepOpen(Outcome outcome) {
    Interval full = outcome.vise().opening();
    Interval usable = outcome.usableOpening().orElseThrow();
    String from = unit.brief(usable.lo(), Rounding.UP);
    String to = unit.brief(usable.hi(), Rounding.DOWN);
    if (usable.hi() == full.hi()) {
      return "keep the jaws open " + from + " or more: a spacer";
    }
    return usable.lo() == full.lo()
        ? "keep the jaws open no more than " + to + ": a stop"
        : "keep the jaws open " + from + " to " + to + ": a spacer and a stop";
  }

  /** How accurately a pairing would have to be measured; empty if neither side alone suffices. */
  public String known(ToleranceNeeded needed) {
    List<String> ways = new ArrayList<>();
    addKnown(ways, "the machine", needed.machine());
    addKnown(ways, "the vise", needed.vise());
    return String.join(", or ", ways);
  }

  /** A tolerance of ± 0 is unattainable. */
  private void addKnown(List<String> ways, String what, OptionalLong most) {
    String to = most.isPresent() ? unit.fine(most.getAsLong(), Rounding.DOWN) : "0";
    if (!to.equals("0")) {
      ways.add(what + " to ±" + to);
    }
  }

  private String stop(Machine machine, End end, Remedy remedy) {
    boolean tableGoes = machine.tableMoves().has(end.axis);
    return "set a soft limit or stop "
        + amount(remedy)
        + " in from the end of "
        + end.axis.letter()
        + " where the "
        + (tableGoes ? "table" : "spindle")
        + " stands toward the "
        + (tableGoes ? end.table : end.spindle);
  }

  private String shorter(Machine machine, End end, Remedy remedy) {
    String reach =
        "the spindle then reaches " + amount(remedy) + " less of the table's " + side(end.spindle);
    return end.fromLoading(machine) < remedy.amount().orElseThrow()
        ? reach + "; the load position lies past that stop: look at loading too"
        : reach;
  }

  private static String side(String word) {
    return word.equals("left") || word.equals("right") ? word + " side" : word;
  }

  private static String leftOut(Machine machine, Vise vise, Orientation turn) {
    String whose =
        machine.turns().contains(turn)
            ? "vise"
            : vise.turns().contains(turn) ? "machine" : "machine and vise";
    return "not allowed by turns (" + whose + "): can the handle be worked there?";
  }

  private String raised(Outcome outcome, Remedy remedy) {
    String least = "a taller one may not do";
    if (outcome.roomOverJaws().isEmpty()) {
      return least;
    }
    long room = outcome.roomOverJaws().getAsLong() - remedy.amount().orElseThrow();
    return least + "; room over the jaws then " + unit.brief(room, Rounding.DOWN);
  }

  private String move(Remedy remedy) {
    Guard guard = remedy.guard().orElseThrow();
    return "set the "
        + guard.name()
        + " "
        + amount(remedy)
        + " "
        + (guard.side().isPresent() ? "farther out" : way(remedy));
  }

  private static String way(Remedy remedy) {
    return switch (remedy.way().orElseThrow()) {
      case LEFT -> "farther left";
      case RIGHT -> "farther right";
      case FRONT -> "farther to the front";
      case REAR -> "farther to the rear";
      case UP -> "higher";
    };
  }

  /** The exact amount, since slightly more may fail: in inches the millimetres stand beside it. */
  private String amount(Remedy remedy) {
    long amount = remedy.amount().orElseThrow();
    String exact = PeopleUnit.MM.fine(amount, Rounding.UP) + " mm";
    return unit == PeopleUnit.MM ? exact : unit.fine(amount, Rounding.UP) + " in (" + exact + ")";
  }
}
