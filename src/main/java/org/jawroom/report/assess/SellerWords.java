package org.jawroom.report.assess;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Question;
import org.jawroom.advice.blank.Relation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.wording.OpenWords;
import org.jawroom.shop.value.Column;

/** The questions to the seller of a machine, in words. */
record SellerWords(PeopleUnit unit) {

  OpenWords open() {
    return new OpenWords(unit);
  }

  /** What the column asks for. */
  static String means(Column column) {
    return switch (column) {
      case SLOT_WIDTH -> "the slot's throat at the top";
      case SLOT_PITCH -> "from one slot to the next, centre to centre";
      case FRONT_GAP -> "table fully forward, door shut: table edge to the inside of the door";
      case REAR_GAP -> "table fully back: table edge to the cover or column";
      case LEFT_GAP -> "table fully left: table edge to the guard";
      case RIGHT_GAP -> "table fully right: table edge to the guard";
      case NOSE_MIN -> "spindle nose to table top, at its lowest";
      case NOSE_MAX -> "spindle nose to table top, at its highest";
      case MAX_LOAD -> "what the table carries";
      default -> "table edge to it, taped at the end of travel that brings the two nearest";
    };
  }

  /** {@code fits if ≥ 41.28 mm}. */
  String change(Question.Change change) {
    String good = change.job() ? "held" : "fits";
    String can = change.alone() ? good : "can be " + (change.job() ? "held" : "made to fit");
    return switch (change.relation()) {
      case ALWAYS -> can + " whatever it is" + others(change) + sure(change);
      case NEVER -> "not " + (change.job() ? "held" : "fitting") + " whatever it is";
      default -> can + " if " + limit(change) + others(change) + sure(change);
    };
  }

  /** {@code ; fits for certain if ≥ 44.5 mm, whatever the others are}. */
  private String sure(Question.Change change) {
    return isSure(change)
        ? "; fits for certain if "
            + limit(change.relation(), change.sure().getAsLong())
            + ", whatever the others are"
        : "";
  }

  private static boolean isSure(Question.Change change) {
    return !change.alone() && change.sure().isPresent();
  }

  private static String others(Question.Change change) {
    return change.alone() ? "" : ", once the other blanks are known too";
  }

  private String limit(Question.Change change) {
    if (change.kilograms().isPresent()) {
      return "≥ " + JobWords.kilograms(change.kilograms().get(), RoundingMode.CEILING) + " kg";
    }
    return limit(change.relation(), change.limit().getAsLong());
  }

  private String limit(Relation relation, long limit) {
    return relation == Relation.AT_MOST
        ? "≤ " + unit.fine(limit, Rounding.DOWN) + " " + unit.word()
        : "≥ " + unit.fine(limit, Rounding.UP) + " " + unit.word();
  }

  /** All questions about one machine, one line each; those that decide nothing come last. */
  List<String> lines(Assessed assessed) {
    List<String> lines = new ArrayList<>();
    List<String> idle = new ArrayList<>();
    for (Question question : assessed.questions()) {
      if (question.isIdle()) {
        if (question.reading().value().isBlank()) {
          idle.add(OpenWords.column(question.reading()));
        }
      } else {
        lines.add(
            open().named(question.reading())
                + " ("
                + means(question.column())
                + "): "
                + answer(question));
      }
    }
    List<String> kinds = LookedFor.not(assessed.machine());
    if (!kinds.isEmpty()) {
      lines.add(
          "Is there a "
              + String.join(", ", kinds)
              + "? It was not looked for; what is not listed is not counted.");
    }
    if (assessed.machine().provenance().source().equals("brochure")) {
      lines.add(
          "Tape it: brochure figures are taken to be off by "
              + unit.brief(assessed.machine().provenance().tolerance(), Rounding.UP)
              + " "
              + unit.word()
              + ".");
    }
    if (!idle.isEmpty()) {
      lines.add("Blank too, but nothing of yours depends on it: " + String.join(", ", idle) + ".");
    }
    return lines;
  }

  private String answer(Question question) {
    List<String> words = new ArrayList<>();
    List<Question.Change> limited =
        question.changes().stream()
            .filter(
                change ->
                    change.relation() != Relation.ALWAYS && change.relation() != Relation.NEVER)
            .toList();
    List<Question.Change> lengths =
        limited.stream().filter(change -> change.limit().isPresent()).toList();
    if (!lengths.isEmpty()) {
      // A machine's blank with a limit helps only if its value is larger, so the least limit comes
      // first.
      long first =
          lengths.stream().mapToLong(change -> change.limit().getAsLong()).min().getAsLong();
      long all = lengths.stream().mapToLong(change -> change.limit().getAsLong()).max().getAsLong();
      long open = lengths.stream().filter(change -> !change.alone()).count();
      words.add(
          first == all
              ? subjects(lengths) + " from " + up(all) + " on, not below"
              : subjects(lengths) + ": all from " + up(all) + " on, none below " + down(first));
      if (open > 0) {
        words.add(
            (open == lengths.size() ? "" : open + " of them ")
                + "only once other blanks are known too");
      }
      List<Question.Change> sure = lengths.stream().filter(SellerWords::isSure).toList();
      sure.stream()
          .mapToLong(change -> change.sure().getAsLong())
          .max()
          .ifPresent(
              from ->
                  words.add(
                      (sure.size() == open ? "" : sure.size() + " of these ")
                          + "for certain from "
                          + up(from)
                          + " on, whatever the others are"));
    }
    limited.stream()
        .filter(change -> change.kilograms().isPresent())
        .forEach(change -> words.add(change.subject() + " " + change(change)));
    count(words, question, Relation.ALWAYS, "still possible, whatever it is");
    count(words, question, Relation.NEVER, "never, whatever it is");
    if (!question.open().isEmpty()) {
      words.add(question.open().size() + " more depend on it, no limit can be computed");
    }
    return String.join("; ", words) + ".";
  }

  private static void count(List<String> words, Question question, Relation relation, String when) {
    List<Question.Change> some =
        question.changes().stream().filter(change -> change.relation() == relation).toList();
    if (!some.isEmpty()) {
      words.add(subjects(some) + " " + when);
    }
  }

  private static String subjects(List<Question.Change> changes) {
    if (changes.size() == 1) {
      return changes.get(0).subject();
    }
    long jobs = changes.stream().filter(Question.Change::job).count();
    long vises = changes.size() - jobs;
    if (jobs == 0 || vises == 0) {
      return jobs == 0 ? vises + " vises" : jobs + " jobs";
    }
    return vises
        + (vises == 1 ? " vise" : " vises")
        + " and "
        + jobs
        + (jobs == 1 ? " job" : " jobs");
  }

  private String up(long limit) {
    return unit.fine(limit, Rounding.UP) + " " + unit.word();
  }

  private String down(long limit) {
    return unit.fine(limit, Rounding.DOWN) + " " + unit.word();
  }
}
