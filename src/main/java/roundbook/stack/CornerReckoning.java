package roundbook.stack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.stack.Corners.At;
import roundbook.stack.Corners.Lifts;
import roundbook.units.Length;

/** Goes through the rounds once and works out how every corner stands: {@link Corners}. */
final class CornerReckoning {
  private final BuildRules rules;
  private final Building building;
  private final Stack planned;
  private final AsBuilt built;
  private Corners below = Corners.AS_PLANNED;
  private Length risen = Length.ZERO;

  CornerReckoning(BuildRules rules, Building building, Stack planned, AsBuilt built) {
    this.rules = rules;
    this.building = building;
    this.planned = planned;
    this.built = built;
  }

  Corners corners() {
    int rounds = planned.courses().size();
    building.corners().forEach(each -> put(rounds, each, Corners.AS_PLANNED.at(rounds, each)));
    for (int round = 1; round <= rounds; round++) {
      Map<String, Length> firsts = new TreeMap<>();
      for (String corner : building.corners()) {
        firsts.put(corner, firstHigh(round, corner));
      }
      Map<String, At> found = new TreeMap<>();
      for (String corner : building.corners()) {
        found.put(corner, at(round, corner, firsts));
      }
      levelled(round, found);
      risen = risen.plus(below.step(round, building, rules));
    }
    return below;
  }

  private void put(int round, String corner, At at) {
    Map<Corner, At> all = new TreeMap<>(below.all());
    all.put(new Corner(round, corner), at);
    below = new Corners(all);
  }

  /** Adds what is to be done about the corners of a round, all of which are known now. */
  private void levelled(int round, Map<String, At> found) {
    List<Length> highs = found.values().stream().map(At::high).toList();
    Levelling levelling = Levelling.of(Length.ZERO, highs, rules);
    boolean read = built.isRead(round, building);
    found.forEach(
        (corner, at) -> {
          Length high = at.high();
          Length pare = read ? levelling.pare(high, rules) : Length.ZERO;
          Length even =
              read
                  ? levelling.nextLower(Length.ZERO, high, rules)
                  : levelling.nextLower(Length.ZERO, high, Length.ZERO, rules);
          put(
              round,
              corner,
              new At(at.change(), at.firstHigh(), at.secondChange(), high, pare, even, at.lifts()));
        });
  }

  private Length chart(int round) {
    return planned.courses().get(round - 1).notch().lower();
  }

  private Length change(int round, String corner) {
    if (round == 1 || isCut(round, corner, true)) {
      return Length.ZERO;
    }
    Length chart = chart(round);
    return below.nextLower(round - 1, corner, chart, building, rules).minus(chart);
  }

  /** Returns how high the first-laid log was expected to lie at a corner. */
  private Length expected(int round, String corner) {
    At under = below.at(round - 1, corner);
    return under
        .high()
        .minus(under.pare())
        .minus(below.step(round - 1, building, rules))
        .plus(change(round, corner));
  }

  private Length firstHigh(int round, String corner) {
    return built
        .firstReading(round, corner)
        .map(read -> read.minus(planned.firstLevelHeight(round)).minus(risen))
        .orElseGet(() -> expected(round, corner));
  }

  private Length secondChange(int round, String corner, Map<String, Length> firsts) {
    if (built.firstReading(round, corner).isEmpty() || isCut(round, corner, false)) {
      return Length.ZERO;
    }
    Length chart = chart(round);
    return Levelling.of(Length.ZERO, List.copyOf(firsts.values()), rules)
        .nextLower(chart, firsts.get(corner), change(round, corner), rules)
        .minus(chart);
  }

  /** Returns a corner as it stands; what is to be done about it waits for the others. */
  private At at(int round, String corner, Map<String, Length> firsts) {
    Length change = change(round, corner);
    Length first = firsts.get(corner);
    Length second = secondChange(round, corner, firsts);
    Length start = expected(round, corner);
    Length onTop = first.plus(second);
    Optional<Length> read =
        built
            .reading(round, corner)
            .map(each -> each.minus(planned.levelHeight(round)).minus(risen));
    Length high = read.orElse(onTop);
    Length misfit = high.minus(onTop);
    Lifts lifts =
        built.firstReading(round, corner).isEmpty()
            ? new Lifts(start.plus(misfit.dividedBy(4)), start.plus(misfit.times(3).dividedBy(4)))
            : new Lifts(
                start.plus(first.minus(start).dividedBy(2)), onTop.plus(misfit.dividedBy(2)));
    return new At(change, first, second, high, Length.ZERO, Length.ZERO, lifts);
  }

  /** Returns whether the lower mark of a log at a corner was typed as it was cut. */
  private boolean isCut(int round, String corner, boolean firstLaid) {
    return built.measures(round, building.wallAt(corner, firstLaid).name()).lowerCut().isPresent();
  }
}
