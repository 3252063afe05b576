package org.jawroom.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.model.Pick;
import org.jawroom.plan.model.PlanMachine;
import org.jawroom.plan.model.ViseType;
import org.jawroom.plan.model.Wishes;
import org.jawroom.plan.model.Work;

/**
 * A cell and its wishes in one line, for tests and their failure messages.
 *
 * <p>{@code M - 500 | V 2 1@300 | F 0/0=+,2,30,9 0/1=-,1,20,8 | J 3:0/0,1/1 1: | buy 300 | keep
 * 0/1}: machines owned, or with their price; vises as stock, with their price if for sale, or
 * {@code =} and the vise of which they are another form; fits as machine/vise=+ (comfortable and
 * settable) or -, most, opening, jaw, several vises as {@code 0/1+2}; jobs as quantity and the fits
 * that hold them; {@code buy} alone has no budget; {@code keep} as machine/vises.
 */
public record CellSketch(CellModel cell, Wishes wishes) {

  public static CellSketch parse(String text) {
    String[] parts = (text + " ").split("\\|");
    List<PlanMachine> machines = new ArrayList<>();
    for (String word : words(parts[0])) {
      machines.add(
          new PlanMachine(
              "m" + machines.size(),
              word.equals("-") ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(word))));
    }
    List<ViseType> vises = new ArrayList<>();
    for (String word : words(parts[1])) {
      String[] fields = word.split("@");
      boolean isForm = word.startsWith("=");
      vises.add(
          new ViseType(
              "v" + vises.size(),
              isForm ? 0 : Integer.parseInt(fields[0]),
              fields.length == 1
                  ? OptionalLong.empty()
                  : OptionalLong.of(Long.parseLong(fields[1])),
              isForm ? OptionalInt.of(Integer.parseInt(word.substring(1))) : OptionalInt.empty()));
    }
    List<Fit> fits = new ArrayList<>();
    for (String word : words(parts[2])) {
      String[] fields = word.split("[=,]");
      fits.add(
          new Fit(
              pick(fields[0]),
              fields[1].equals("+"),
              Integer.parseInt(fields[2]),
              Long.parseLong(fields[3]),
              Long.parseLong(fields[4])));
    }
    List<Work> jobs = new ArrayList<>();
    for (String word : words(parts[3])) {
      String[] fields = word.split("[:,]");
      Set<Pick> heldBy = new LinkedHashSet<>();
      for (int one = 1; one < fields.length; one++) {
        heldBy.add(pick(fields[one]));
      }
      jobs.add(new Work("j" + jobs.size(), Integer.parseInt(fields[0]), heldBy));
    }
    Wishes wishes = Wishes.none();
    for (int part = 4; part < parts.length; part++) {
      List<String> words = words(" " + parts[part].strip());
      if (parts[part].strip().startsWith("buy")) {
        wishes =
            wishes.withBuying(
                words.isEmpty()
                    ? OptionalLong.empty()
                    : OptionalLong.of(Long.parseLong(words.get(0))));
      } else {
        Map<Integer, List<Integer>> keep = new HashMap<>();
        words.forEach(
            word -> keep.put(Integer.parseInt(word.split("/")[0]), numbers(word.split("/")[1])));
        wishes = wishes.keeping(keep);
      }
    }
    return new CellSketch(new CellModel(machines, vises, fits, jobs), wishes);
  }

  /** All words of a section except its name. */
  private static List<String> words(String part) {
    List<String> words = new ArrayList<>(List.of(part.strip().split("\\s+")));
    words.remove(0);
    return words;
  }

  private static Pick pick(String text) {
    String[] fields = text.split("/");
    return new Pick(Integer.parseInt(fields[0]), numbers(fields[1]));
  }

  private static List<Integer> numbers(String text) {
    return Arrays.stream(text.split("\\+")).map(Integer::valueOf).toList();
  }

  private static String text(List<Integer> numbers) {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining("+"));
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("M");
    cell.machines().forEach(machine -> text.append(' ').append(price(machine.price(), "-", "")));
    text.append(" | V");
    cell.vises()
        .forEach(
            vise ->
                text.append(' ')
                    .append(
                        vise.formOf().isPresent()
                            ? "=" + vise.formOf().getAsInt()
                            : vise.stock() + price(vise.price(), "", "@")));
    text.append(" | F");
    cell.fits()
        .forEach(
            fit ->
                text.append(' ')
                    .append(text(fit.pick()))
                    .append('=')
                    .append(fit.good() ? '+' : '-')
                    .append(',')
                    .append(fit.most())
                    .append(',')
                    .append(fit.opening())
                    .append(',')
                    .append(fit.jaw()));
    text.append(" | J");
    cell.jobs()
        .forEach(
            job ->
                text.append(' ')
                    .append(job.quantity())
                    .append(':')
                    .append(
                        job.heldBy().stream()
                            .map(CellSketch::text)
                            .sorted()
                            .collect(Collectors.joining(","))));
    if (wishes.buy()) {
      text.append(" | buy").append(price(wishes.budget(), "", " "));
    }
    Optional<Map<Integer, List<Integer>>> keep = wishes.keep();
    keep.ifPresent(
        kept -> {
          text.append(" | keep");
          kept.forEach(
              (machine, vises) -> text.append(' ').append(machine).append('/').append(text(vises)));
        });
    return text.toString();
  }

  private static String text(Pick pick) {
    return pick.machine() + "/" + text(pick.vises());
  }

  private static String price(OptionalLong price, String none, String before) {
    return price.isPresent() ? before + price.getAsLong() : none;
  }
}
