package roundbook.crosscut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;
import roundbook.balance.Aims;
import roundbook.bucking.Bole;
import roundbook.bucking.BuckingTask;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.BuckingTask.Settled;
import roundbook.bucking.BuckingTask.Side;
import roundbook.crosscut.Material.Source;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.rounds.Places;
import roundbook.units.Length;

/** A job's stems, logs and places in the engine's words. */
final class Tasks {
  private final Job job;
  private final Material material;
  private final Grid grid;
  private final List<Wall> walls;

  Tasks(Job job, Material material) {
    this.job = job;
    this.material = material;
    this.grid = material.grid();
    this.walls = job.building().walls();
  }

  /**
   * Returns the task of so many rounds.
   *
   * @param least the least diameter of a piece of a stem
   * @param inTwo whether long logs are cut
   */
  BuckingTask task(int rounds, Length least, boolean inTwo) {
    List<Bole> boles = material.boles(least, inTwo);
    BuildRules rules = job.rules();
    double price = rules.number(Setting.WASTE_PRICE).doubleValue();
    return new BuckingTask(
        aims(),
        Grid.INCH,
        boles,
        walls.stream().map(this::side).toList(),
        rounds,
        grid.up(rules.length(Setting.KERF)),
        price * grid.length(1).inches(),
        settled(rounds));
  }

  private Side side(Wall wall) {
    Length neck = job.building().after(wall).thickness().plus(job.rules().overhang());
    return new Side(material.raw(wall), material.squared() + grid.down(neck), wall.laidFirst());
  }

  private Aims aims() {
    BuildRules rules = job.rules();
    Length least = rules.length(Setting.GAP_LEAST).least(rules.gap());
    boolean worst = rules.text(Setting.BALANCE_FOR).equals("worst");
    Aims.Weights usual = Aims.Weights.USUAL;
    return new Aims(
        grid.ticks(rules.gap()),
        grid.ticks(least),
        grid.ticks(rules.length(Setting.SPREAD_MOST)),
        grid.ticks(rules.sizeStep()),
        new Aims.Weights(usual.least(), usual.spread(), usual.inversion(), worst));
  }

  private Settled settled(int rounds) {
    Cut[] cuts = new Cut[rounds * walls.size()];
    for (int place = 0; place < cuts.length; place++) {
      Wall wall = walls.get(place % walls.size());
      int bole = material.held(place / walls.size() + 1, wall);
      cuts[place] = bole < 0 ? null : new Cut(bole, 0, material.raw(wall));
    }
    long[] sizes = new long[rounds];
    Arrays.setAll(
        sizes,
        round -> job.heldSize(round + 1).map(cut -> (long) grid.ticks(cut.size())).orElse(0L));
    return new Settled(cuts, sizes, allowed(rounds));
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
    return (bole, place) -> bole < may.size() && may.get(bole)[place];
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
