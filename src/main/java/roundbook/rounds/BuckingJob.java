package roundbook.rounds;

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
import roundbook.bucking.Parting;
import roundbook.job.BuildRules;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/** A job in the words of the engine that cuts stems. */
public final class BuckingJob {
  private final Job job;
  private final Grid grid;
  private final List<Wall> walls;

  /** Begins with a job. */
  public BuckingJob(Job job) {
    this.job = job;
    this.grid = Grid.of(job.rules());
    this.walls = job.building().walls();
  }

  /** Returns the steps and ticks that the engine reckons in. */
  public Grid grid() {
    return grid;
  }

  /** Returns the steps from saw cut to saw cut of a wall's pieces. */
  public int raw(Wall wall) {
    return raw(job.building().trimmed(wall, job.rules().overhang()));
  }

  /** Returns the steps from saw cut to saw cut of a piece that is so long when it is squared. */
  int raw(Length trimmed) {
    return grid.up(trimmed.plus(job.rules().length(Setting.SQUARING_ALLOWANCE).times(2)));
  }

  /** Returns the steps squared off each end. */
  int squared() {
    return grid.down(job.rules().length(Setting.SQUARING_ALLOWANCE));
  }

  /** Returns the number of a place. */
  int place(Wall wall, int round) {
    return (round - 1) * walls.size() + walls.indexOf(wall);
  }

  /** Returns diameters in ticks at 0, 1, 2 … of so many steps from a butt. */
  public int[] ticks(DiameterProfile profile, int steps) {
    int[] ticks = new int[steps + 1];
    Arrays.setAll(ticks, step -> grid.ticks(profile.at(grid.length(step))));
    return ticks;
  }

  private Bole bole(FilledPlace place) {
    int[] ticks = new int[raw(place.wall()) + 1];
    for (int step = 0; step < ticks.length; step++) {
      Length at = grid.length(Math.max(0, step - squared())).least(place.trimmed());
      ticks[step] = grid.ticks(place.at(at));
    }
    return Bole.of(ticks, List.of(), 0);
  }

  /**
   * Returns what is to be cut.
   *
   * @param rounds how many rounds are to stand
   * @param boles the stems
   * @param settled places that stay as they are
   * @param allowed whether a stem, by its number, may serve a place, or a side of an opening
   * @param parting places that may have two pieces
   */
  public BuckingTask task(
      int rounds,
      List<Bole> boles,
      List<FilledPlace> settled,
      BiPredicate<Integer, Integer> allowed,
      Parting parting) {
    BuildRules rules = job.rules();
    List<Bole> all = new ArrayList<>(boles);
    Cut[] cuts = new Cut[rounds * walls.size()];
    for (FilledPlace place : settled) {
      if (place.round() <= rounds) {
        cuts[place(place.wall(), place.round())] = new Cut(all.size(), 0, raw(place.wall()));
        all.add(bole(place));
      }
    }
    long[] sizes = new long[rounds];
    Arrays.setAll(
        sizes,
        round -> job.heldSize(round + 1).map(cut -> (long) grid.ticks(cut.size())).orElse(0L));
    return new BuckingTask(
        aims(),
        Grid.INCH,
        all,
        walls.stream().map(this::side).toList(),
        rounds,
        grid.up(rules.length(Setting.KERF)),
        rules.number(Setting.WASTE_PRICE).doubleValue() * grid.length(1).inches(),
        new Settled(cuts, sizes, (bole, place) -> bole < boles.size() && allowed.test(bole, place)),
        parting);
  }

  private Side side(Wall wall) {
    Length neck = job.building().after(wall).thickness().plus(job.rules().overhang());
    return new Side(raw(wall), squared() + grid.down(neck), wall.laidFirst());
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
}
