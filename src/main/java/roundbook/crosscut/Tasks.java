package roundbook.crosscut;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import roundbook.bucking.BuckingTask;
import roundbook.bucking.Parting;
import roundbook.crosscut.Material.Source;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Wall;
import roundbook.rounds.Places;
import roundbook.units.Length;

/** A job's stems, logs and places in the engine's words. */
final class Tasks {
  private final Job job;
  private final Material material;
  private final List<Wall> walls;

  Tasks(Job job, Material material) {
    this.job = job;
    this.material = material;
    this.walls = job.building().walls();
  }

  /**
   * Returns the task of so many rounds.
   *
   * @param least the least diameter of a piece of a stem
   * @param inTwo whether long logs are cut
   */
  BuckingTask task(int rounds, Length least, boolean inTwo) {
    return material
        .words()
        .task(rounds, material.boles(least, inTwo), material.held(), allowed(rounds), Parting.NONE);
  }

  private BiPredicate<Integer, Integer> allowed(int rounds) {
    Places places = new Places(job, rounds);
    List<boolean[]> may = new ArrayList<>();
    for (Source source : material.sources()) {
      boolean[] here = new boolean[rounds * walls.size()];
      for (int place = 0; place < here.length; place++) {
        int round = place / walls.size() + 1;
        Wall wall = walls.get(place % walls.size());
        here[place] =
            source
                .log()
                .map(log -> !places.pieces(log, wall, round).isEmpty())
                .orElseGet(() -> mayStem(source.stem().traits().keep(), round, rounds, wall));
      }
      may.add(here);
    }
    return (bole, place) -> may.get(bole)[place];
  }

  private boolean mayStem(Log.Keep keep, int round, int rounds, Wall wall) {
    boolean pinned =
        job.pins().stream()
            .anyMatch(
                pin ->
                    !pin.log().isEmpty()
                        && pin.round().orElse(0) == round
                        && pin.wall().equalsIgnoreCase(wall.name()));
    boolean kept =
        switch (keep) {
          case SILL -> round == 1;
          case PLATE -> round == rounds;
          case SPARE -> false;
          case ANY, HEADER -> true;
        };
    return kept && !pinned;
  }
}
