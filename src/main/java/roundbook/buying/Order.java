package roundbook.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.OtherLog;
import roundbook.job.Wall;
import roundbook.problem.Read;
import roundbook.units.Length;
import roundbook.wood.Species;

/**
 * What a yard is asked to send for a whole building.
 *
 * @param building the walls
 * @param sizes the rounds; none where only what a yard lacks is ordered
 * @param lines what is ordered, the longest logs first, then the lowest rounds
 * @param species what wood the weights are of
 */
public record Order(Building building, Sizes sizes, List<Line> lines, Species.Match species) {
  /** Copies the list. */
  public Order {
    lines = List.copyOf(lines);
  }

  /** Returns the order for the walls and the height that a job asks for. */
  public static Read<Order> of(BuildRules rules, Building building) {
    Read<Sizes> sizes = Sizes.of(rules, building);
    if (sizes.value().isEmpty()) {
      return Read.failed(sizes.problems());
    }
    Read<Order> order = new OrderLines(rules, building, sizes.value().get()).order();
    return order.value().isEmpty() ? order : Read.of(order.value().get(), sizes.problems());
  }

  /**
   * Logs that a yard lacks for its rounds.
   *
   * @param walls the walls they are for, all with logs of one length
   * @param count how many
   * @param band how thick
   */
  public record Lack(List<Wall> walls, int count, Line.Band band) {
    /** Copies the list. */
    public Lack {
      walls = List.copyOf(walls);
    }
  }

  /**
   * Returns the order of what a yard lacks, by the same rules.
   *
   * @param rounds how many rounds the walls are to have
   */
  public static Order ofLacks(BuildRules rules, Building building, int rounds, List<Lack> lacks) {
    Sizes none = new Sizes(List.of(), rules.gap(), false);
    return new OrderLines(rules, building, none).order(rounds, lacks);
  }

  /**
   * Returns the order with plates, joists and the like as lines of it: those whose diameter was
   * told.
   */
  public Order with(BuildRules rules, List<OtherLog> others) {
    return new OrderLines(rules, building, sizes).with(this, others);
  }

  /** Returns the logs of that kind that no line can hold, for no diameter of them was told. */
  public static List<OtherLog> unmeasured(List<OtherLog> others) {
    return others.stream().filter(other -> !OrderLines.isMeasured(other)).toList();
  }

  /** Returns whether whole walls are ordered, and not only what a yard lacks. */
  public boolean isWhole() {
    return sizes.count() > 0;
  }

  /** Returns how many logs are ordered in all. */
  public int count() {
    return lines.stream().mapToInt(line -> line.count().all()).sum();
  }

  /** Returns the sum of something over all logs ordered. */
  public double total(ToDoubleFunction<Line> each) {
    return lines.stream().mapToDouble(line -> line.count().all() * each.applyAsDouble(line)).sum();
  }

  /** Returns how many spares are among them. */
  public int spares() {
    return lines.stream().mapToInt(line -> line.count().spares()).sum();
  }

  /** Returns how many logs the walls hold. */
  public int logs() {
    return lines.stream().filter(Line::isOfWalls).mapToInt(line -> line.count().logs()).sum();
  }

  /** Returns the outside of the walls in square feet, openings and corners not taken off. */
  public double wallSquareFeet() {
    double round =
        building.walls().stream()
            .map(wall -> wall.outside())
            .reduce(Length.ZERO, Length::plus)
            .inches();
    return round * sizes.height().inches() / 144;
  }

  /** Returns every log ordered as a thing to haul, by the most it may weigh. */
  public List<Loads.Item> items() {
    List<Loads.Item> items = new ArrayList<>();
    for (Line line : lines) {
      for (int i = 0; i < line.count().all(); i++) {
        items.add(new Loads.Item(line.number(), line.lengths().delivered(), line.poundsAtMost()));
      }
    }
    return items;
  }
}
