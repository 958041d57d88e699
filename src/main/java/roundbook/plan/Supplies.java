package roundbook.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import roundbook.buying.LeastTips;
import roundbook.buying.LogLengths;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.OrderLine.Purpose;
import roundbook.rounds.Choice;
import roundbook.rounds.Fit;
import roundbook.rounds.Shortage;
import roundbook.stack.FilledPlace;
import roundbook.takeoff.Starter;
import roundbook.units.Length;

/** Compares logs on hand with logs needed, and writes the order to the yard. */
final class Supplies {
  private final Job job;
  private final Choice choice;
  private final Fit fit;

  Supplies(Job job, Choice choice) {
    this.job = job;
    this.choice = choice;
    this.fit = new Fit(job);
  }

  /** Returns the classes, the longest first, with the logs too short for any wall last. */
  List<ClassSupply> classes() {
    List<ClassSupply> classes = new ArrayList<>();
    Length above = null;
    for (Length least : lengths()) {
      classes.add(supply(least, above));
      above = least;
    }
    classes.add(tooShort(above));
    return classes;
  }

  private List<Length> lengths() {
    return job.building().walls().stream()
        .map(fit::least)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  private ClassSupply supply(Length least, Length above) {
    List<Wall> walls =
        job.building().walls().stream().filter(wall -> fit.least(wall).equals(least)).toList();
    int needed = walls.size() * wantedRounds() - paired(walls);
    List<Log> onHand =
        job.logs().stream()
            .filter(log -> within(log, least, above) && fit.refused(log).isEmpty())
            .toList();
    int spare = (int) onHand.stream().filter(choice.unused()::contains).count();
    return new ClassSupply(
        least, names(walls), needed, placedOn(walls), onHand.size(), spare, sparesWanted(needed));
  }

  private ClassSupply tooShort(Length shortest) {
    List<Log> all = job.logs().stream().filter(log -> log.length().isLessThan(shortest)).toList();
    int spare = (int) all.stream().filter(choice.unused()::contains).count();
    int placed = all.size() - spare;
    return new ClassSupply(Length.ZERO, "", placed, placed, all.size(), spare, 0);
  }

  /** Returns how many places of walls short logs fill, so that no long one is needed there. */
  private int paired(List<Wall> walls) {
    return (int) choice.pairs().stream().filter(pair -> walls.contains(pair.wall())).count();
  }

  private int placedOn(List<Wall> walls) {
    return (int)
        choice.courses().stream()
            .flatMap(course -> course.places().stream())
            .filter(place -> !place.isShared())
            .map(FilledPlace::wall)
            .filter(walls::contains)
            .count();
  }

  private int wantedRounds() {
    return choice.shortage().map(Shortage::wanted).orElse(choice.courses().size());
  }

  private int sparesWanted(int needed) {
    BigDecimal share = job.rules().number(Setting.SPARES_PERCENT).movePointLeft(2);
    int count =
        share.multiply(BigDecimal.valueOf(needed)).setScale(0, RoundingMode.CEILING).intValue();
    return Math.max(1, count);
  }

  /** Returns the order: what the rounds lack first, then a starter and spares that are missing. */
  List<OrderLine> order(List<ClassSupply> classes, Starter starter) {
    List<OrderLine> lines = new ArrayList<>();
    choice
        .shortage()
        .ifPresent(shortage -> shortage.missing().forEach(each -> lines.add(of(each))));
    if (starter.lacking()) {
      lines.add(starter(starter));
    }
    for (ClassSupply supply : classes) {
      if (supply.sparesShort() && !choice.courses().isEmpty()) {
        lines.add(spares(supply));
      }
    }
    return lines;
  }

  private OrderLine of(Shortage.Missing missing) {
    return line(
        missing.count(), missing.midFrom(), missing.midTo(), missing.walls(), Purpose.NEEDED);
  }

  /** Returns a line with the lengths and tips that a yard is told; all its walls are as long. */
  private OrderLine line(int count, Length from, Length to, String names, Purpose purpose) {
    List<String> walls = List.of(names.split(" "));
    Wall wall = job.building().wall(walls.get(0)).orElseThrow();
    Length trimmed = fit.trimmed(wall);
    return new OrderLine(
        count,
        fit.least(wall),
        from,
        to,
        names,
        purpose,
        LogLengths.of(job.rules(), trimmed, true),
        LogLengths.of(job.rules(), trimmed, false),
        LeastTips.of(job.rules(), job.building(), wall, from));
  }

  private OrderLine spares(ClassSupply supply) {
    List<Length> mids =
        choice.courses().stream()
            .flatMap(course -> course.places().stream())
            .filter(place -> fit.least(place.wall()).equals(supply.least()))
            .map(FilledPlace::mid)
            .sorted()
            .toList();
    Length step = job.rules().printStep().times(4);
    Length from = mids.get(mids.size() / 4).roundedTo(step);
    Length to = mids.get(mids.size() * 3 / 4).roundedTo(step);
    int count = supply.sparesWanted() - supply.spare();
    return line(count, from, to, supply.walls(), Purpose.SPARE);
  }

  /** One log of the first round's size gives the half logs of both walls. */
  private OrderLine starter(Starter starter) {
    Length size = choice.courses().get(0).notch().size();
    List<Wall> walls = starter.halves().stream().map(FilledPlace::wall).toList();
    return line(1, size, size, names(walls), Purpose.STARTER);
  }

  private static boolean within(Log log, Length least, Length above) {
    boolean longEnough = !log.length().isLessThan(least);
    return longEnough && (above == null || log.length().isLessThan(above));
  }

  private static String names(List<Wall> walls) {
    return walls.stream().map(Wall::name).collect(Collectors.joining(" "));
  }
}
