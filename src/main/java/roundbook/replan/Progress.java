package roundbook.replan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Ahead;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.HeldLog;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.RoundSize;
import roundbook.site.CutTicks;
import roundbook.site.SiteReport;
import roundbook.stack.FilledPlace;
import roundbook.stack.Hewn;
import roundbook.stack.PlacedLog;
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
  private final Map<String, Ahead> ahead;
  private final Map<Place, Held> held = new TreeMap<>();
  private final Map<Place, Measures> measures = new TreeMap<>();
  private final Map<String, Log> hewn = new HashMap<>();
  private final Map<String, Log> before = new TreeMap<>();

  Progress(SiteReport site) {
    this.site = site;
    Job corrected = site.job().withMeasuredPieces().corrected();
    this.ahead = ahead(corrected, site.typed().yard());
    this.expected = hewn(corrected, ahead);
    site.plan().forEach(this::settle);
  }

  /** Returns the logs of a job that were measured in the yard. */
  private static Map<String, Ahead> ahead(Job corrected, Map<String, Measures> yard) {
    Map<String, Ahead> ahead = new TreeMap<>();
    yard.forEach(
        (tag, typed) -> corrected.log(tag).ifPresent(log -> ahead.put(tag, new Ahead(typed, log))));
    return ahead;
  }

  /** Returns a job whose logs are as they were measured in the yard. */
  private static Job hewn(Job corrected, Map<String, Ahead> ahead) {
    return corrected.withLogs(
        corrected.logs().stream()
            .map(log -> ahead.containsKey(log.tag()) ? hewn(ahead.get(log.tag())) : log)
            .toList());
  }

  /** The whole log is measured as it lies, not the piece that it gives. */
  private static Log hewn(Ahead log) {
    Measures typed = log.measures();
    Piece whole = new Piece(log.tallied(), Length.ZERO, log.tallied().length());
    return new Hewn(typed.butt(), typed.mid(), typed.tip()).of(whole).log();
  }

  private static Map<String, Measures> yard(AsBuilt recorded) {
    Map<String, Measures> yard = new TreeMap<>();
    recorded.ahead().forEach((tag, log) -> yard.put(tag, log.measures()));
    return yard;
  }

  private void settle(Place place, Held planned) {
    boolean cut = site.typed().ticks().isCut(place);
    boolean beyond = expected.rules().rounds().stream().anyMatch(rounds -> place.round() > rounds);
    Map<Place, String> stands = site.stands(place);
    boolean gone = stands.values().stream().anyMatch(site.typed().lost()::contains) || beyond;
    if (!site.isSettled(place) || gone && !cut) {
      return;
    }
    Held here = here(place, planned, stands);
    held.put(place, here);
    Set<Place> known = new TreeSet<>(stands.keySet());
    known.add(place);
    for (Place each : known) {
      Measures typed = typed(each);
      if (!typed.isEmpty()) {
        measures.put(each, typed);
      }
    }
    record(expected, place, here, measures, before, hewn);
    asPlanned(here, then(place), correction(expected.rules()), before, ahead);
  }

  /** Returns the log of a place, or both, the ones used instead where there are any. */
  private Held here(Place place, Held planned, Map<Place, String> stands) {
    List<HeldLog> logs = new ArrayList<>();
    for (HeldLog each : planned.logs()) {
      Place own = planned.isShared() ? place.side(logs.isEmpty()) : place;
      logs.add(here(place, each, stands.get(own)));
    }
    return new Held(logs);
  }

  private HeldLog here(Place place, HeldLog planned, String tag) {
    Length trimmed =
        planned.beside().map(HeldLog.Beside::trimmed).orElseGet(() -> trimmed(expected, place));
    boolean same = tag.equals(planned.tag());
    return same ? planned : new HeldLog(tag, squared(tag, trimmed), planned.beside());
  }

  /**
   * Returns the correction of the tally that a log was planned with: where it is cut, that which
   * the round's page was printed with.
   */
  private Length then(Place place) {
    if (!site.typed().ticks().isCut(place)) {
      return correction(expected.rules());
    }
    return site.recorded()
        .cutSize(place.round())
        .map(CutSize::correction)
        .orElseGet(() -> correction(site.printed()));
  }

  /**
   * Puts logs as they were expected before hewing back to the correction they were planned with;
   * those measured in the yard stay what they are.
   */
  private static void asPlanned(
      Held here, Length then, Length now, Map<String, Log> before, Map<String, Ahead> ahead) {
    for (String tag : here.tags()) {
      if (!ahead.containsKey(tag)) {
        before.computeIfPresent(tag, (same, log) -> log.thinnedBy(now.minus(then)));
      }
    }
  }

  private static Length correction(BuildRules rules) {
    return rules.optionalLength(Setting.TALLY_CORRECTION).orElse(Length.ZERO);
  }

  /** A log used instead is squared at its butt by the allowance; all its excess is off the tip. */
  private Length squared(String tag, Length trimmed) {
    Length excess = expected.log(tag).orElseThrow().length().minus(trimmed);
    return site.printed().length(Setting.SQUARING_ALLOWANCE).least(excess.dividedBy(2));
  }

  private static Length trimmed(Job job, Place place) {
    Wall wall = job.building().wall(place.wall()).orElseThrow();
    return job.building().trimmed(wall, job.rules().overhang());
  }

  /**
   * Notes the logs of a place as they are hewn and as they were expected, where any is measured.
   */
  private static void record(
      Job expected,
      Place place,
      Held here,
      Map<Place, Measures> measures,
      Map<String, Log> before,
      Map<String, Log> hewn) {
    FilledPlace filled = FilledPlace.of(expected, place, here).orElseThrow();
    for (PlacedLog log : filled.logs()) {
      Measures typed = measures.getOrDefault(filled.placeOf(log), Measures.NONE);
      if (typed.hewn()) {
        before.put(log.piece().log().tag(), log.piece().log());
        Log other = new Hewn(typed.butt(), typed.mid(), typed.tip()).of(log.piece()).log();
        hewn.put(other.tag(), other);
      }
    }
  }

  /** Returns the job with the logs as hewn and what is built; lost logs are left out. */
  Job job() {
    List<Log> logs = new ArrayList<>();
    for (Log log : expected.logs()) {
      Log own = hewn.getOrDefault(log.tag(), log);
      logs.add(site.typed().lost().contains(log.tag()) ? own.skipped() : own);
    }
    AsBuilt built =
        AsBuilt.NOTHING
            .withCut(sizes())
            .withPlaces(held, measures)
            .withReadings(site.typed().readings(), site.typed().firstReadings())
            .withExpected(before)
            .withAhead(ahead)
            .withLost(site.typed().lost())
            .withGaps(site.typed().gaps());
    return expected.withLogs(logs).withBuilt(built);
  }

  /** Returns what the rounds are cut to of which a log is cut. */
  private List<CutSize> sizes() {
    List<CutSize> sizes = new ArrayList<>();
    CutTicks ticks = site.typed().ticks();
    for (int round = 1; round <= Math.max(ticks.begun(), site.recorded().cut().size()); round++) {
      int here = round;
      CutSize size = site.recorded().cutSize(round).orElseGet(() -> size(here));
      sizes.add(size.open(ticks.open(round, expected.building())));
    }
    return sizes;
  }

  /**
   * Returns what a round's page told to cut it to: the marks of a log that is cut, where they were
   * typed, else those of the mean of its middles.
   */
  private CutSize size(int round) {
    BuildRules printed = site.printed();
    List<Length> mids = new ArrayList<>();
    for (Wall wall : expected.building().walls()) {
      Place place = new Place(round, wall.name());
      Measures typed = typed(place);
      boolean own = site.typed().ticks().own(round).contains(wall.name());
      if (own && typed.lowerCut().isPresent() && typed.upperCut().isPresent()) {
        return CutSize.ofMarks(typed.lowerCut().get(), typed.upperCut().get())
            .corrected(correction(printed));
      }
      mids.add(typed.mid().orElseGet(() -> pageMid(place)));
    }
    Length size = RoundSize.of(mids, printed.sizeStep()).taken();
    return new CutSize(size, printed.gap()).corrected(correction(printed));
  }

  private Measures typed(Place place) {
    return site.typed().measures().getOrDefault(place, Measures.NONE);
  }

  /** Short logs beside an opening are measured apart, and then make the middle of their place. */
  private Length pageMid(Place place) {
    Job tallied = withRules(site.job(), site.printed()).corrected();
    Job then = hewn(tallied, ahead(tallied, yard(site.recorded())));
    Held here = held.getOrDefault(place, site.plan().get(place));
    List<Log> logs =
        then.logs().stream().map(log -> isMeasured(here, log) ? hewn.get(log.tag()) : log).toList();
    return FilledPlace.of(then.withLogs(logs), place, here).orElseThrow().mid();
  }

  private boolean isMeasured(Held here, Log log) {
    return here.isShared() && here.holds(log.tag()) && hewn.containsKey(log.tag());
  }

  private static Job withRules(Job job, BuildRules rules) {
    return new Job(rules, job.building(), job.logs(), job.openings(), job.pins())
        .withPrices(job.prices())
        .withOthers(job.others())
        .withStems(job.stems());
  }

  /**
   * Returns the job as a workbook was printed with: what was recorded then, nothing typed since.
   */
  static Job printed(SiteReport site) {
    Job tallied = withRules(site.job(), site.printed()).withLogs(site.logsBefore()).corrected();
    AsBuilt recorded = site.recorded();
    Map<String, Ahead> ahead = ahead(tallied, yard(recorded));
    Job expected = hewn(tallied, ahead);
    Map<String, Log> before = new TreeMap<>();
    Map<String, Log> hewn = new HashMap<>();
    recorded
        .held()
        .forEach(
            (place, here) -> {
              record(expected, place, here, recorded.measures(), before, hewn);
              Length now = correction(expected.rules());
              boolean cut = recorded.isCut(place);
              Length then = cut ? recorded.cut().get(place.round() - 1).correction() : now;
              asPlanned(here, then, now, before, ahead);
            });
    List<Log> logs =
        expected.logs().stream()
            .map(log -> hewn.getOrDefault(log.tag(), log))
            .map(log -> recorded.lost().contains(log.tag()) ? log.skipped() : log)
            .toList();
    AsBuilt built =
        AsBuilt.NOTHING
            .withCut(recorded.cut())
            .withPlaces(recorded.held(), recorded.measures())
            .withReadings(recorded.readings(), recorded.firstReadings())
            .withExpected(before)
            .withAhead(ahead)
            .withLost(recorded.lost());
    return expected.withLogs(logs).withBuilt(built);
  }
}
