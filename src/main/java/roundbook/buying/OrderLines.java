package roundbook.buying;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.buying.Line.Band;
import roundbook.buying.Line.Count;
import roundbook.buying.Line.From;
import roundbook.buying.Line.Rounds;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.OtherLog;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.Species;

/**
 * Makes the lines of an order.
 *
 * <p>In each class of lengths consecutive rounds stand on one line for as long as the first and the
 * last differ by no more than {@code Band_most} less {@code Spread_most}; its band reaches half of
 * {@code Spread_most} past both. Of each line {@code Spares_percent} more are ordered, one at the
 * least, and {@code Butt_share} of it as butt logs.
 *
 * <p>Plates, joists and the like stand on lines of their own after the walls', without spares.
 */
final class OrderLines {
  /** Spares in percent where nobody says otherwise: with fewer, joints come out flagged. */
  private static final BigDecimal SPARES = BigDecimal.valueOf(25);

  private final BuildRules rules;
  private final Building building;
  private final Sizes sizes;
  private final Species.Match species;

  OrderLines(BuildRules rules, Building building, Sizes sizes) {
    this.rules = rules;
    this.building = building;
    this.sizes = sizes;
    this.species = Species.find(rules.text(Setting.SPECIES));
  }

  Read<Order> order() {
    Length band = rules.length(Setting.BAND_MOST);
    Length spread = rules.length(Setting.SPREAD_MOST);
    if (band.isLessThan(spread)) {
      return Refusal.read(
          Refusal.of(ProblemCode.ORDER_BAND, "narrow")
              .with("band", Refusal.printed(band, rules))
              .with("spread", Refusal.printed(spread, rules)));
    }
    List<Line> lines = new ArrayList<>();
    for (List<Wall> alike : classes()) {
      for (Rounds rounds : bands(band.minus(spread))) {
        int logs = alike.size() * (rounds.last() - rounds.first() + 1);
        lines.addAll(lines(lines.size() + 1, group(alike, rounds), logs));
      }
    }
    return Read.of(new Order(building, sizes, lines, species), List.of());
  }

  /** Returns what a yard lacks, its thinnest logs deciding how thick tips are to be. */
  Order order(int rounds, List<Order.Lack> lacks) {
    List<Line> lines = new ArrayList<>();
    for (Order.Lack lack : lacks) {
      Group group = new Group(lack.walls(), new Rounds(1, rounds), lack.band(), lack.band().from());
      lines.addAll(lines(lines.size() + 1, group, lack.count()));
    }
    return new Order(building, sizes, lines, species);
  }

  /** Returns the walls by the trimmed length of their logs, the longest first. */
  private List<List<Wall>> classes() {
    return building.walls().stream()
        .map(this::trimmed)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .map(
            length ->
                building.walls().stream().filter(wall -> trimmed(wall).equals(length)).toList())
        .toList();
  }

  private Length trimmed(Wall wall) {
    return building.trimmed(wall, rules.overhang());
  }

  private List<Rounds> bands(Length widest) {
    List<Rounds> bands = new ArrayList<>();
    int first = 1;
    for (int round = 2; round <= sizes.count() + 1; round++) {
      boolean ends =
          round > sizes.count()
              || sizes.size(first).minus(sizes.size(round)).absolute().isMoreThan(widest);
      if (ends) {
        bands.add(new Rounds(first, round - 1));
        first = round;
      }
    }
    return bands;
  }

  /** Logs that are alike but for the place in the tree that they come from. */
  private record Group(List<Wall> walls, Rounds rounds, Band band, Length thinnest) {}

  private Group group(List<Wall> alike, Rounds rounds) {
    Length half = rules.length(Setting.SPREAD_MOST).dividedBy(2);
    Length one = sizes.size(rounds.first());
    Length other = sizes.size(rounds.last());
    Band band = new Band(one.least(other).minus(half), one.most(other).plus(half));
    return new Group(alike, rounds, band, one.least(other));
  }

  private List<Line> lines(int number, Group group, int logs) {
    Count all = new Count(logs, Math.max(1, share(spares(), logs, RoundingMode.CEILING)));
    if (rules.length(Setting.BUTT_SPARE).isZero()) {
      return List.of(line(number, group, From.ANY, all));
    }
    BigDecimal share = rules.number(Setting.BUTT_SHARE);
    Count butts =
        new Count(
            share(share, all.logs(), RoundingMode.HALF_UP),
            share(share, all.spares(), RoundingMode.HALF_UP));
    Count seconds = new Count(all.logs() - butts.logs(), all.spares() - butts.spares());
    List<Line> lines = new ArrayList<>();
    if (butts.all() > 0) {
      lines.add(line(number, group, From.BUTT, butts));
    }
    if (seconds.all() > 0) {
      lines.add(line(number + lines.size(), group, From.SECOND, seconds));
    }
    return lines;
  }

  private Line line(int number, Group group, From from, Count count) {
    List<Wall> walls = group.walls();
    LogLengths lengths = LogLengths.of(rules, trimmed(walls.get(0)), from == From.BUTT);
    LeastTips tips =
        walls.stream()
            .map(wall -> LeastTips.of(rules, building, wall, group.thinnest()))
            .reduce(LeastTips::most)
            .orElseThrow();
    String names = walls.stream().map(Wall::name).collect(Collectors.joining(" "));
    Optional<Rounds> rounds = Optional.of(group.rounds());
    return new Line(number, names, rounds, from, count, lengths, group.band(), tips, weight());
  }

  /**
   * Returns an order with the logs beside it that are for no wall, each kind on a line after the
   * walls' lines, unless no diameter of it was told: what is as thick as nobody knows has no
   * weight.
   */
  Order with(Order order, List<OtherLog> others) {
    List<Line> lines = new ArrayList<>(order.lines());
    for (OtherLog other : others) {
      if (isMeasured(other)) {
        lines.add(line(lines.size() + 1, other));
      }
    }
    return new Order(order.building(), order.sizes(), lines, order.species());
  }

  /** Returns whether a diameter of such logs was told, so that they can be weighed. */
  static boolean isMeasured(OtherLog other) {
    return !other.mid().isZero() || !other.tip().isZero();
  }

  /** A middle that was not told is taken thicker than the tip by the taper of measured stems. */
  private Line line(int number, OtherLog other) {
    LogLengths lengths = LogLengths.of(rules, other.length(), false);
    Length taper = Length.of(Quantities.TAPER * other.length().inches() / 24, LengthUnit.INCH);
    Length mid = other.mid().most(other.tip().plus(taper).roundedTo(rules.printStep()));
    return new Line(
        number,
        other.name(),
        Optional.empty(),
        From.ANY,
        new Count(other.count(), 0),
        lengths,
        new Band(mid, mid.plus(rules.length(Setting.BAND_MOST))),
        new LeastTips(other.tip(), other.tip(), other.tip()),
        weight());
  }

  private Line.Weight weight() {
    Species.Spread spread = species.species().greenSpread();
    return new Line.Weight(species.species().greenPounds(), spread.least(), spread.most());
  }

  private BigDecimal spares() {
    return rules
        .value(Setting.SPARES_PERCENT)
        .filter(value -> value.origin() != Origin.DEFAULT)
        .map(value -> (BigDecimal) value.value())
        .orElse(SPARES);
  }

  private static int share(BigDecimal percent, int count, RoundingMode rounding) {
    return percent
        .movePointLeft(2)
        .multiply(BigDecimal.valueOf(count))
        .setScale(0, rounding)
        .intValueExact();
  }
}
