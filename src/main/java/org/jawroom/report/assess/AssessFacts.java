package org.jawroom.report.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jawroom.advice.assess.Assessed;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.advice.assess.NutFit;
import org.jawroom.advice.assess.Room;
import org.jawroom.advice.assess.RoomLimit;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.Job;

/** All facts about a machine in an assessment, in the order of the sheet and the page. */
final class AssessFacts {

  /** One fact; {@code text} formats it for a candidate, {@code brief} for an owned machine. */
  record Fact(String label, Function<Assessed, String> text, Function<Assessed, String> brief) {}

  /** Facts under one heading. */
  record Section(String title, List<Fact> facts) {}

  private final Assessment assessment;
  private final List<Assessed> shown;
  private final AssessWords words;
  private final List<Section> sections = new ArrayList<>();
  private List<Fact> facts = new ArrayList<>();

  private AssessFacts(Assessment assessment, List<Assessed> shown, AssessWords words) {
    this.assessment = assessment;
    this.shown = shown;
    this.words = words;
  }

  /** {@code shown}: the machines listed. */
  static List<Section> of(Assessment assessment, List<Assessed> shown, AssessWords words) {
    AssessFacts all = new AssessFacts(assessment, shown, words);
    all.machine();
    all.vises();
    all.jobs();
    all.nuts();
    all.room();
    all.lookFor();
    return all.sections;
  }

  private void machine() {
    same("status", it -> words.offer().status(it.machine()));
    same("price", it -> words.offer().price(it.machine()));
    same("table", it -> words.offer().table(it.machine()));
    same("travel", it -> words.offer().travel(it.machine()));
    same("T-slots", it -> words.offer().slots(it.machine()));
    same("spindle nose over the table", it -> words.offer().nose(it.machine()));
    same("source of the figures", it -> words.offer().source(it.machine()));
    same("not looked for", it -> words.offer().notLookedFor(it.machine()));
    section("The machine, lengths in " + words.unit().plural());
  }

  private void vises() {
    verdict(Verdict.FITS, "fits");
    verdict(Verdict.AWKWARD, "awkward: little room for the hand");
    verdict(Verdict.MEASURE, "measure: too close to call");
    verdict(Verdict.LIMITED, "limited: part of the opening");
    verdict(Verdict.NO_PLACE, "no place: hits something everywhere");
    verdict(Verdict.NO_MOUNT, "no mount: bolts don't line up");
    verdict(Verdict.UNKNOWN, "unknown: not measured");
    if (shown.stream().anyMatch(it -> !AssessWords.resting(it).isEmpty())) {
      add(
          "holds for every value of a reading known within bounds",
          words::whatever,
          it -> "" + AssessWords.resting(it).size());
    }
    if (shown.stream().anyMatch(it -> !it.suspects().isEmpty())) {
      same("in doubt: checks on the machine say that", AssessWords::suspects);
    }
    add("best vise on it", words::best, words::bestName);
    if (!assessment.homeless().isEmpty()) {
      add(
          "of those without a home ("
              + String.join(", ", AssessWords.vises(assessment.homeless()))
              + ") fit or are awkward",
          words::homeless,
          it -> AssessWords.NOTHING);
    }
    add(
        "side by side on the table",
        it -> words.sideBySide(it, true),
        it -> words.sideBySide(it, false));
    section("Your " + assessment.kinds() + " kinds of vise");
  }

  private void verdict(Verdict verdict, String label) {
    add(label, it -> words.vises(it, verdict, true), it -> words.vises(it, verdict, false));
  }

  private void jobs() {
    if (assessment.jobs() == 0) {
      return;
    }
    held("held", Assessed::held);
    held("held that no other owned machine holds", Assessed::onlyHere);
    counted("held, tool or weight not checked", it -> AssessWords.jobs(it.unchecked()));
    counted("unknown", it -> AssessWords.jobs(it.unknown()));
    counted("not to be run on it (jobs table)", it -> AssessWords.jobs(it.barred()));
    section(assessment.jobs() == 1 ? "Your 1 job" : "Your " + assessment.jobs() + " jobs");
  }

  private void held(String label, Function<Assessed, List<Job>> jobs) {
    add(
        label,
        it -> words.held(it, jobs.apply(it), true),
        it -> words.held(it, jobs.apply(it), false));
  }

  private void nuts() {
    same("bolt", it -> words.offer().bolt(it.machine()));
    nuts("made for a slot this wide: fit", NutFit.Fit.FITS);
    nuts("for a narrower slot: go in with play, less bearing", NutFit.Fit.LOOSE);
    nuts("for a wider slot: do not go in", NutFit.Fit.TOO_WIDE);
    section("T-nuts you have, by the slots they are made for");
  }

  private void nuts(String label, NutFit.Fit fit) {
    add(label, it -> words.nuts(it, fit, true), it -> words.nuts(it, fit, false));
  }

  private void room() {
    rooms(Axis.Y, "front or rear");
    rooms(Axis.X, "right or left");
    if (!facts.isEmpty()) {
      same("unknown, so not counted", words::roomBlanks);
      section(
          "Largest vise the guards leave room for, with all it sweeps, bolts not counted"
              + height());
    }
  }

  private String height() {
    return assessment
        .pattern()
        .map(
            size ->
                ", as high as your "
                    + size.vise().name()
                    + " ("
                    + words.unit().brief(size.top(), Rounding.UP)
                    + ")")
        .orElse("");
  }

  private void rooms(Axis axis, String to) {
    rooms(axis, Room::longest, "handle " + to + ", ", " wide: longest");
    rooms(axis, Room::widest, "handle " + to + ", ", " long: widest");
  }

  /** Given sizes with the same result for every listed machine share one line. */
  private void rooms(Axis axis, Function<Room, List<RoomLimit>> kind, String before, String after) {
    List<RoomLimit> first =
        shown.stream()
            .flatMap(machine -> machine.room().stream())
            .filter(room -> room.turns().get(0).uAxis() == axis)
            .findFirst()
            .map(kind)
            .orElse(List.of());
    int from = 0;
    while (from < first.size()) {
      int to = from + 1;
      while (to < first.size() && isSame(axis, kind, from, to)) {
        to++;
      }
      int which = from;
      String given =
          first.subList(from, to).stream()
              .map(limit -> words.unit().brief(limit.given(), Rounding.UP))
              .collect(Collectors.joining(", "));
      same(before + given + after, it -> words.room(it, axis, kind, which));
      from = to;
    }
  }

  private boolean isSame(Axis axis, Function<Room, List<RoomLimit>> kind, int one, int other) {
    return shown.stream()
        .allMatch(it -> words.room(it, axis, kind, one).equals(words.room(it, axis, kind, other)));
  }

  private void lookFor() {
    same("handle to the", it -> words.offer().handle(it.machine()));
    add("two bolt holes", it -> words.offer().holes(it.machine()), it -> AssessWords.NOTHING);
    same("bolt holes, ISO 273 medium", it -> words.offer().hole(it.machine()));
    same(
        "vise and part together no higher than"
            + (assessment.tool().isPresent()
                ? " (tool " + words.unit().brief(assessment.tool().getAsLong(), Rounding.UP) + ")"
                : "; take off the longest tool"),
        words::stack);
    same("vise and part together no heavier than", it -> words.offer().load(it.machine()));
    section("What to look for in a vise for it");
  }

  private void counted(String label, Function<Assessed, List<String>> names) {
    add(
        label,
        it -> words.counted(names.apply(it), true),
        it -> words.counted(names.apply(it), false));
  }

  private void same(String label, Function<Assessed, String> text) {
    add(label, text, text);
  }

  private void add(
      String label, Function<Assessed, String> text, Function<Assessed, String> brief) {
    facts.add(new Fact(label, text, brief));
  }

  private void section(String title) {
    sections.add(new Section(title, List.copyOf(facts)));
    facts = new ArrayList<>();
  }
}
