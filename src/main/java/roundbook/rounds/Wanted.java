package roundbook.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/** How many rounds the job wants, and what is missing for them. */
final class Wanted {
  private final PairedJob paired;
  private final Job job;
  private final Fit fit;

  Wanted(PairedJob paired) {
    this.paired = paired;
    this.job = paired.job();
    this.fit = new Fit(job);
  }

  /**
   * Returns the rounds wanted: as told; or a first guess, the wall height over the course of the
   * usable logs' mean middle diameter and the gap; or as many as the logs could fill, up to the
   * height of a storey.
   */
  int rounds() {
    int walls = job.building().walls().size();
    List<Length> mids = mids();
    if (job.rules().rounds().isPresent()) {
      return job.rules().rounds().getAsInt();
    }
    Optional<Length> height = height(job);
    if (mids.isEmpty()) {
      return 0;
    }
    Length sum = mids.stream().reduce(Length.ZERO, Length::plus);
    double course = sum.dividedBy(mids.size()).plus(job.rules().gap()).inches();
    if (height.isPresent()) {
      return Math.max(1, Math.toIntExact(Math.round(height.get().inches() / course)));
    }
    int most = Math.max(1, (int) Math.floor(Choice.STOREY.inches() / course));
    return Math.min(most, mids.size() / walls);
  }

  /** Returns the wall height that decides the rounds; empty where it does not. */
  static Optional<Length> height(Job job) {
    return job.rules().rounds().isPresent()
        ? Optional.empty()
        : job.rules().optionalLength(Setting.WALL_HEIGHT);
  }

  private List<Length> mids() {
    Stream<Length> logs =
        job.logs().stream()
            .filter(log -> log.traits().keep() != Log.Keep.SPARE && fit.refused(log).isEmpty())
            .map(Log::mid);
    return Stream.concat(logs, paired.pairs().stream().map(FilledPlace::mid)).sorted().toList();
  }

  /** Returns what is missing; empty when all rounds told or asked for by height are built. */
  Optional<Shortage> shortage(int wanted, int built) {
    int goal = job.asksHeight() ? wanted : Math.max(1, built);
    if (built >= goal) {
      return Optional.empty();
    }
    return Optional.of(new Shortage(goal, built, missing(goal)));
  }

  private List<Shortage.Missing> missing(int rounds) {
    Places places = new Places(paired, rounds);
    int[] logOf = places.match();
    Map<Length, List<Wall>> lacking = new TreeMap<>(Comparator.reverseOrder());
    for (int place = 0; place < logOf.length; place++) {
      if (logOf[place] < 0) {
        Wall wall = places.wall(place);
        lacking.computeIfAbsent(fit.least(wall), least -> new ArrayList<>()).add(wall);
      }
    }
    List<Length> mids = mids();
    Length step = Length.ofInchFraction(1, 4);
    Length from = mids.isEmpty() ? Length.ZERO : mids.get(mids.size() / 4).roundedTo(step);
    Length to = mids.isEmpty() ? Length.ZERO : mids.get(mids.size() * 3 / 4).roundedTo(step);
    List<Shortage.Missing> missing = new ArrayList<>();
    lacking.forEach(
        (least, walls) ->
            missing.add(new Shortage.Missing(walls.size(), least, names(walls), from, to)));
    return missing;
  }

  private String names(List<Wall> lacking) {
    List<Wall> walls = job.building().walls().stream().filter(lacking::contains).toList();
    return String.join(" ", walls.stream().map(Wall::name).toList());
  }
}
