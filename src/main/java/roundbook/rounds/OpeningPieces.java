package roundbook.rounds;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.balance.Effort;
import roundbook.bucking.Bole;
import roundbook.bucking.BuckingResult.PartedCut;
import roundbook.bucking.BuckingTask;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.JointSearch;
import roundbook.bucking.Parting;
import roundbook.bucking.Parting.PartedPlace;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.HeldLog;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.EndFit;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * Places that openings cut through, as pieces and prices of the search that cuts stems: which of
 * them get two short logs, and which.
 */
final class OpeningPieces {
  /** What a log for the whole wall costs where two short ones may lie, in square inches. */
  static final double ASKED = 4;

  /** The same where two must lie. */
  static final double FORCED = 10_000;

  /** What a log costs beside an opening that is long enough for a whole wall. */
  private static final double WALL_LOG = 1;

  /** What a log costs on a wall that is long enough for a longer one: no pair is worth that. */
  private static final double LONGER = 4;

  private final Job job;
  private final int rounds;
  private final List<OpeningPlace> open;
  private final List<FilledPlace> settled;
  private final Set<Log> beside;
  private final Set<String> gone;
  private final List<Wall> walls;
  private final BuckingJob words;
  private final Grid grid;
  private final Fit fit;
  private final Length allowance;

  /**
   * Begins with what stays.
   *
   * @param job the job
   * @param rounds how many rounds are to stand
   * @param open the places that may have two logs
   * @param settled the places that stay as they are
   * @param beside the logs that may lie beside openings, if nothing else is against it
   */
  OpeningPieces(
      Job job,
      int rounds,
      List<OpeningPlace> open,
      List<FilledPlace> settled,
      Collection<Log> beside) {
    this.job = job;
    this.rounds = rounds;
    this.open = open;
    this.settled = settled;
    this.beside = Set.copyOf(beside);
    this.gone =
        settled.stream().flatMap(place -> place.held().tags().stream()).collect(Collectors.toSet());
    this.walls = job.building().walls();
    this.words = new BuckingJob(job);
    this.grid = words.grid();
    this.fit = new Fit(job);
    this.allowance = job.rules().length(Setting.SQUARING_ALLOWANCE);
  }

  /**
   * Returns the pairs that are chosen, in the order of the places; empty where the logs do not fill
   * so many rounds.
   *
   * @param whole what one log costs where two may lie, in square inches
   */
  Optional<List<FilledPlace>> chosen(double whole, Effort effort) {
    return JointSearch.solve(task(whole), grid.slide(), effort)
        .map(result -> result.parted().stream().map(this::pair).toList());
  }

  private BuckingTask task(double whole) {
    boolean[][] may = new boolean[job.logs().size()][];
    Places places = new Places(job, rounds);
    Arrays.setAll(may, log -> may(log, places));
    List<Bole> boles = job.logs().stream().map(this::bole).toList();
    return words.task(rounds, boles, settled, (bole, slot) -> may[bole][slot], parting(whole));
  }

  private Bole bole(Log log) {
    boolean tip = job.rules().text(Setting.CUT_EXCESS).equals("tip");
    int[] ticks = words.ticks(log.profile(), grid.up(log.length()));
    return Bole.of(ticks, List.of(), grid.ticks(job.rules().thickness()) + 1)
        .alreadyCut()
        .giving(1)
        .losing(tip ? 1 : 3);
  }

  /** Returns which places a log may fill, and then which sides of openings. */
  private boolean[] may(int number, Places places) {
    Log log = job.logs().get(number);
    boolean[] may = new boolean[rounds * walls.size() + 2 * open.size()];
    if (gone.contains(log.tag())) {
      return may;
    }
    int demand = 0;
    while (demand < rounds * walls.size()) {
      may[demand] = !places.pieces(number, demand).isEmpty();
      demand++;
    }
    boolean free =
        log.traits().keep() == Log.Keep.ANY
            && beside.contains(log)
            && job.built().placeOf(log.tag()).isEmpty()
            && job.pins().stream().noneMatch(pin -> pin.log().equals(log.tag()));
    for (OpeningPlace place : open) {
      may[demand++] = free && serves(log, place) && !ways(log, place, true).isEmpty();
      may[demand++] = free && serves(log, place) && !ways(log, place, false).isEmpty();
    }
    return may;
  }

  /** Returns whether a log is too short for the whole wall, and nothing is wished against it. */
  private boolean serves(Log log, OpeningPlace place) {
    Log.Wish wish = log.place();
    return log.length().isLessThan(fit.least(place.wall()))
        && (wish.wall().isEmpty() || wish.wall().equalsIgnoreCase(place.wall().name()))
        && wish.round().orElse(place.round()) == place.round();
  }

  private List<PlacedLog> ways(Log log, OpeningPlace place, boolean left) {
    Length trimmed = left ? place.left() : place.right();
    return fit.beside(log, place.wall(), place.round(), left, trimmed);
  }

  private Parting parting(double whole) {
    BuildRules rules = job.rules();
    Length half = rules.printStep().dividedBy(2);
    List<Length> mids = job.logs().stream().map(Log::mid).sorted().toList();
    Length usual = mids.get(mids.size() / 2);
    List<PartedPlace> places =
        open.stream()
            .map(
                each ->
                    new PartedPlace(
                        words.place(each.wall(), each.round()),
                        words.raw(each.left()),
                        words.raw(each.right())))
            .toList();
    double[][] prices = new double[job.logs().size()][];
    Arrays.setAll(prices, log -> prices(job.logs().get(log), whole));
    return new Parting(
        places,
        words.squared(),
        grid.ticks(rules.length(Setting.GAP_LEAST).minus(half)),
        grid.ticks(rules.length(Setting.GAP_MOST).plus(half)),
        grid.ticks(usual.minus(EndFit.least(job, usual, fit -> !fit.isFlagged()))),
        prices,
        !job.isButtAtStart(walls.get(0), 1));
  }

  /** Returns what a log costs in each place, and then at the sides of openings. */
  private double[] prices(Log log, double whole) {
    double[] prices = new double[rounds * walls.size() + 2 * open.size()];
    Arrays.fill(prices, fit.isWallLog(log) ? WALL_LOG : 0);
    for (int place = 0; place < rounds * walls.size(); place++) {
      Length own = fit.least(walls.get(place % walls.size()));
      prices[place] = fit.isLongerThan(log, own) ? LONGER : 0;
    }
    open.forEach(place -> prices[words.place(place.wall(), place.round())] += whole);
    return prices;
  }

  private FilledPlace pair(PartedCut cut) {
    OpeningPlace place =
        open.stream()
            .filter(each -> words.place(each.wall(), each.round()) == cut.place())
            .findFirst()
            .orElseThrow();
    HeldLog left = held(cut.left(), place.left(), cut.leftOut());
    HeldLog right = held(cut.right(), place.right(), cut.rightOut());
    return FilledPlace.of(job, place.place(), new Held(List.of(left, right))).orElseThrow();
  }

  private HeldLog held(Cut cut, Length trimmed, boolean buttOut) {
    Log log = job.logs().get(cut.bole());
    Length most = log.length().minus(trimmed).minus(allowance);
    Length off = allowance.plus(grid.length(cut.from())).least(most);
    return HeldLog.beside(log.tag(), off, trimmed, buttOut);
  }
}
