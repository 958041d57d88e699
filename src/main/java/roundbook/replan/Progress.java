package roundbook.replan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Measures;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.RoundSize;
import roundbook.site.SiteReport;
import roundbook.stack.Hewn;
import roundbook.units.Length;

/**
 * The job as it stands on site: what is settled, the logs as hewn, the sizes that rounds are cut
 * to.
 *
 * <p>A round that was cut in an earlier revision keeps the size recorded there. One that is newly
 * cut has the size that its page showed: the mean of its measured middles under the settings that
 * the page was printed with.
 */
final class Progress {
  private final SiteReport site;
  private final Job expected;
  private final Map<Place, Held> held = new TreeMap<>();
  private final Map<Place, Measures> measures = new TreeMap<>();
  private final Map<String, Log> hewn = new HashMap<>();
  private final Map<String, Log> before = new TreeMap<>();

  Progress(SiteReport site) {
    this.site = site;
    this.expected = site.job().corrected();
    site.plan().forEach(this::settle);
  }

  private void settle(Place place, Held planned) {
    Measures typed = site.typed().measures().getOrDefault(place, Measures.NONE);
    boolean cut = place.round() <= site.typed().cut();
    boolean beyond = expected.rules().rounds().stream().anyMatch(rounds -> place.round() > rounds);
    String tag = site.tag(place).orElseThrow();
    boolean gone = site.typed().lost().contains(tag) || beyond;
    boolean settled =
        cut
            || site.isBegun(place.round())
            || site.typed().used().containsKey(place)
            || typed.hewn();
    if (!settled || gone && !cut) {
      return;
    }
    Held here = tag.equals(planned.tag()) ? planned : new Held(tag, squared(place, tag));
    held.put(place, here);
    if (!typed.isEmpty()) {
      measures.put(place, typed);
    }
    if (typed.hewn()) {
      Log log = expected.log(tag).orElseThrow();
      before.put(tag, log);
      hewn.put(tag, asHewn(expected, place, here, typed));
    }
  }

  /** A log used instead is squared at its butt by the allowance; all its excess is off the tip. */
  private Length squared(Place place, String tag) {
    Length excess = expected.log(tag).orElseThrow().length().minus(trimmed(expected, place));
    return site.printed().length(Setting.SQUARING_ALLOWANCE).least(excess.dividedBy(2));
  }

  private static Length trimmed(Job job, Place place) {
    Wall wall = job.building().wall(place.wall()).orElseThrow();
    return job.building().trimmed(wall, job.rules().overhang());
  }

  private static Log asHewn(Job job, Place place, Held here, Measures typed) {
    Log log = job.log(here.tag()).orElseThrow();
    Piece piece = new Piece(log, here.cutOffButt(), trimmed(job, place));
    return new Hewn(typed.butt(), typed.mid(), typed.tip()).of(piece).log();
  }

  /** Returns the job with the logs as hewn and what is built; lost logs are left out. */
  Job job() {
    List<Log> logs = new ArrayList<>();
    for (Log log : expected.logs()) {
      Log own = hewn.getOrDefault(log.tag(), log);
      logs.add(site.typed().lost().contains(log.tag()) ? own.skipped() : own);
    }
    AsBuilt built =
        new AsBuilt(
            sizes(),
            held,
            measures,
            site.typed().readings(),
            site.typed().firstReadings(),
            before,
            site.typed().lost());
    return new Job(
        expected.rules(), expected.building(), logs, expected.openings(), expected.pins(), built);
  }

  private List<CutSize> sizes() {
    List<CutSize> sizes = new ArrayList<>(site.recorded().cut());
    BuildRules printed = site.printed();
    for (int round = sizes.size() + 1; round <= site.typed().cut(); round++) {
      List<Length> mids = new ArrayList<>();
      for (Wall wall : expected.building().walls()) {
        mids.add(mid(new Place(round, wall.name())));
      }
      Length size = RoundSize.of(mids, printed.sizeStep()).taken();
      sizes.add(new CutSize(size, printed.gap()));
    }
    return sizes;
  }

  /** Returns the middle that a page's size was taken from: as measured, else as it was planned. */
  private Length mid(Place place) {
    Measures typed = measures.getOrDefault(place, Measures.NONE);
    return typed.mid().orElseGet(() -> plannedMid(place));
  }

  private Length plannedMid(Place place) {
    Job then = withRules(site.job(), site.printed()).corrected();
    Held here = held.get(place);
    Log log = then.log(here.tag()).orElseThrow();
    return new Piece(log, here.cutOffButt(), trimmed(then, place)).mid();
  }

  private static Job withRules(Job job, BuildRules rules) {
    return new Job(rules, job.building(), job.logs(), job.openings(), job.pins());
  }

  /**
   * Returns the job as a workbook was printed with: what was recorded then, nothing typed since.
   */
  static Job printed(SiteReport site) {
    Job expected = withRules(site.job(), site.printed()).withLogs(site.logsBefore()).corrected();
    AsBuilt recorded = site.recorded();
    Map<String, Log> before = new TreeMap<>();
    Map<String, Log> hewn = new HashMap<>();
    recorded
        .held()
        .forEach(
            (place, here) -> {
              Measures known = recorded.measures(place.round(), place.wall());
              if (known.hewn()) {
                before.put(here.tag(), expected.log(here.tag()).orElseThrow());
                hewn.put(here.tag(), asHewn(expected, place, here, known));
              }
            });
    List<Log> logs =
        expected.logs().stream()
            .map(log -> hewn.getOrDefault(log.tag(), log))
            .map(log -> recorded.lost().contains(log.tag()) ? log.skipped() : log)
            .toList();
    AsBuilt built =
        new AsBuilt(
            recorded.cut(),
            recorded.held(),
            recorded.measures(),
            recorded.readings(),
            recorded.firstReadings(),
            before,
            recorded.lost());
    return new Job(
        expected.rules(), expected.building(), logs, expected.openings(), expected.pins(), built);
  }
}
