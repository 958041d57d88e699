package roundbook.crosscut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.bucking.Bole;
import roundbook.bucking.Bole.Stretch;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.job.Wall;
import roundbook.rounds.BuckingJob;
import roundbook.rounds.Fit;
import roundbook.rounds.Grid;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/** The stems and logs of a job as boles, and what lies in places already. */
final class Material {
  private final Job job;
  private final BuckingJob words;
  private final Grid grid;
  private final Fit fit;
  private final List<Source> sources = new ArrayList<>();
  private final List<FilledPlace> held = new ArrayList<>();

  /**
   * A stem or a log that pieces come from.
   *
   * @param stem the stem, or the log as one
   * @param log the number of the log in its job; empty for a stem
   * @param several whether it may give more than one piece
   */
  record Source(Stem stem, Optional<Integer> log, boolean several) {}

  /** Takes all stems that nothing was cut from, and all logs that may lie in a wall. */
  Material(Job job) {
    this.job = job;
    this.words = new BuckingJob(job);
    this.grid = words.grid();
    this.fit = new Fit(job);
    job.stems().all().stream()
        .filter(stem -> job.stems().pieces(stem, job.logs()).isEmpty())
        .filter(this::isUsable)
        .forEach(stem -> sources.add(new Source(stem, Optional.empty(), true)));
    for (int i = 0; i < job.logs().size(); i++) {
      Log log = job.logs().get(i);
      boolean settled = job.built().placeOf(log.tag()).isPresent();
      if (!settled && log.traits().keep() != Log.Keep.SPARE && fit.refused(log).isEmpty()) {
        sources.add(new Source(Stem.of(log), Optional.of(i), mayBeCut(log)));
      }
    }
    job.built()
        .held()
        .forEach((place, logs) -> FilledPlace.of(job, place, logs).ifPresent(held::add));
  }

  List<Source> sources() {
    return sources;
  }

  private boolean isUsable(Stem stem) {
    boolean crooked =
        job.rules()
            .optionalLength(Setting.SWEEP_MOST)
            .filter(most -> stem.log("", Length.ZERO, shortest()).traits().sweep().isMoreThan(most))
            .isPresent();
    return !stem.traits().skip() && stem.traits().keep() != Log.Keep.SPARE && !crooked;
  }

  private Length shortest() {
    return job.building().walls().stream()
        .map(fit::least)
        .reduce(Length::least)
        .orElse(Length.ZERO);
  }

  private boolean mayBeCut(Log log) {
    boolean free =
        log.traits().keep() == Log.Keep.ANY
            && log.place().equals(Log.Wish.ANYWHERE)
            && job.stems().of(log).isEmpty()
            && job.pins().stream().noneMatch(pin -> pin.log().equals(log.tag()));
    Length two = shortest().times(2).plus(job.rules().length(Setting.KERF));
    return free
        && job.rules().text(Setting.CUT_IN_TWO).equals("yes")
        && !log.length().isLessThan(two);
  }

  /** Returns whether any log may be cut in two. */
  boolean hasLongLogs() {
    return sources.stream().anyMatch(source -> source.several() && source.log().isPresent());
  }

  /**
   * Returns the boles of all sources.
   *
   * @param least the least diameter of a piece of a stem
   * @param inTwo whether long logs are cut
   */
  List<Bole> boles(Length least, boolean inTwo) {
    List<Bole> boles = new ArrayList<>();
    for (Source source : sources) {
      boles.add(bole(source, least, inTwo));
    }
    return boles;
  }

  private Bole bole(Source source, Length least, boolean inTwo) {
    Stem stem = source.stem();
    boolean whole = source.log().isPresent() && !source.several();
    int[] ticks =
        words.ticks(stem.profile(), whole ? grid.up(stem.length()) : grid.down(stem.length()));
    List<Stretch> bad =
        stem.bad().stream()
            .map(each -> new Stretch(grid.down(each.from()), grid.up(each.to())))
            .toList();
    Length thin = job.rules().thickness();
    if (source.log().isPresent()) {
      Bole log = Bole.of(ticks, bad, grid.ticks(thin) + 1).alreadyCut();
      return source.several() && inTwo ? log : log.giving(1);
    }
    Bole bole = Bole.of(ticks, bad, Math.max(grid.ticks(least), grid.ticks(thin) + 1));
    return job.rules()
        .optionalNumber(Setting.STEM_MOST)
        .map(most -> bole.giving(most.intValue()))
        .orElse(bole);
  }

  /** Returns the places that are held already. */
  List<FilledPlace> held() {
    return held;
  }

  /** Returns the steps from saw cut to saw cut of a wall's pieces. */
  int raw(Wall wall) {
    return words.raw(wall);
  }

  Grid grid() {
    return grid;
  }

  /** Returns the job in the engine's words. */
  BuckingJob words() {
    return words;
  }
}
