package roundbook.buying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.units.Bulk;
import roundbook.units.Length;

/**
 * Logs packed on a trailer, load by load.
 *
 * @param loads the loads, the first to drive first
 */
public record Loads(List<Load> loads) {
  /** Copies the list. */
  public Loads {
    loads = List.copyOf(loads);
  }

  /**
   * One log to haul.
   *
   * @param line the line of the order that it is of
   * @param length how long it is as delivered
   * @param pounds the most it may weigh
   */
  public record Item(int line, Length length, double pounds) {}

  /**
   * One load.
   *
   * @param items its logs, the longest first
   */
  public record Load(List<Item> items) {
    /** Copies the list. */
    public Load {
      items = List.copyOf(items);
    }

    /** Returns what it weighs at the most, in pounds. */
    public double pounds() {
      return items.stream().mapToDouble(Item::pounds).sum();
    }

    /** Returns its longest log. */
    public Length longest() {
      return items.get(0).length();
    }

    /** Returns its logs by the line of the order that they are of. */
    public Map<Integer, List<Item>> byLine() {
      Map<Integer, List<Item>> byLine = new TreeMap<>();
      items.forEach(
          item -> byLine.computeIfAbsent(item.line(), line -> new ArrayList<>()).add(item));
      return byLine;
    }
  }

  /**
   * Packs logs on the trailer that a job names; empty where it names none.
   *
   * <p>Logs heavier than a load, or longer than the bed, lie on none and are said line by line.
   */
  public static Read<Optional<Loads>> of(BuildRules rules, List<Item> items) {
    Bulk bulk = new Bulk(rules.metric());
    if (rules.optionalNumber(Setting.LOAD_MOST).isEmpty()) {
      return Read.of(Optional.empty(), List.of());
    }
    double most = rules.number(Setting.LOAD_MOST).doubleValue() / bulk.weight(1);
    Optional<Length> bed = rules.optionalLength(Setting.BED_LENGTH);
    Map<Integer, Problem> left = new TreeMap<>();
    List<Item> fit = new ArrayList<>();
    for (Item item : items) {
      if (item.pounds() > most) {
        left.put(
            item.line(),
            Refusal.of(ProblemCode.LOAD_SMALL, "weight")
                .with("line", item.line())
                .with("weight", Math.round(bulk.weight(item.pounds())))
                .with("unit", rules.metric() ? "kg" : "lb"));
      } else if (bed.filter(item.length()::isMoreThan).isPresent()) {
        left.put(
            item.line(),
            Refusal.of(ProblemCode.LOAD_SMALL, "length")
                .with("line", item.line())
                .with("length", Refusal.printed(item.length(), rules)));
      } else {
        fit.add(item);
      }
    }
    Optional<Loads> loads = fit.isEmpty() ? Optional.empty() : Optional.of(packed(fit, most));
    return Read.of(loads, List.copyOf(left.values()));
  }

  /** Returns whether a line of the order rides on any load. */
  public boolean carries(int line) {
    return loads.stream()
        .anyMatch(load -> load.items().stream().anyMatch(item -> item.line() == line));
  }

  /**
   * Packs logs, the longest first and of one length the heaviest, each into the first load that
   * holds it (first fit decreasing).
   *
   * @param items the logs, none heavier than a load
   * @param most what a load may weigh, in pounds
   */
  static Loads packed(List<Item> items, double most) {
    List<Item> sorted =
        items.stream()
            .sorted(
                Comparator.comparing(Item::length)
                    .thenComparingDouble(Item::pounds)
                    .reversed()
                    .thenComparingInt(Item::line))
            .toList();
    List<List<Item>> loads = new ArrayList<>();
    for (Item item : sorted) {
      List<Item> free =
          loads.stream()
              .filter(load -> sum(load) + item.pounds() <= most)
              .findFirst()
              .orElseGet(ArrayList::new);
      if (free.isEmpty()) {
        loads.add(free);
      }
      free.add(item);
    }
    return new Loads(loads.stream().map(Load::new).toList());
  }

  private static double sum(List<Item> load) {
    return load.stream().mapToDouble(Item::pounds).sum();
  }
}
