package roundbook.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.BuildRules;
import roundbook.job.GapSpot;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Measures;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.table.NamedBook;
import roundbook.table.NamedBook.Found;
import roundbook.units.Length;

/**
 * A crew workbook as it came back from the site.
 *
 * @param book the workbook, to find the places of cells in
 * @param issue which revision it is
 * @param job the tally, walls and openings with the settings as they stand now; nothing built
 * @param printed the settings that this revision was planned with
 * @param plan which log this revision puts in each place, and what is cut off its butt
 * @param recorded what was built and measured when this revision was made
 * @param typed what was typed into it
 * @param tally what the tally told, before and now
 */
public record SiteReport(
    NamedBook book,
    Issue issue,
    Job job,
    BuildRules printed,
    Map<Place, Held> plan,
    AsBuilt recorded,
    Typed typed,
    Tallied tally) {
  /** Copies the map. */
  public SiteReport {
    plan = new TreeMap<>(plan);
  }

  /**
   * What the tally told.
   *
   * @param found what was found when it was read, in this revision or one before
   * @param bought tags of logs that come from a further tally and that this revision had not
   */
  public record Tallied(List<Problem> found, Set<String> bought) {
    /** Copies the list and the set. */
    public Tallied {
      found = List.copyOf(found);
      bought = Set.copyOf(bought);
    }
  }

  /**
   * Which revision a workbook is.
   *
   * @param revision counted from 1
   * @param from the file that the first revision was made from
   * @param wanted how many rounds were wanted
   */
  public record Issue(int revision, String from, OptionalInt wanted) {}

  /**
   * What was typed into a workbook.
   *
   * @param ticks what is ticked cut
   * @param measures diameters and marks, by place
   * @param used the log used instead of the planned one, by place
   * @param readings corner heights after rounds
   * @param firstReadings corner heights on top of first-laid logs
   * @param lost logs that are lost
   * @param gaps gaps that were measured
   * @param yard diameters as hewn that were measured before a log had its place, by tag
   */
  public record Typed(
      CutTicks ticks,
      Map<Place, Measures> measures,
      Map<Place, String> used,
      Map<Corner, Length> readings,
      Map<Corner, Length> firstReadings,
      Set<String> lost,
      Map<GapSpot, Length> gaps,
      Map<String, Measures> yard) {
    /** Copies the maps. */
    public Typed {
      yard = Map.copyOf(yard);
      measures = new TreeMap<>(measures);
      used = new TreeMap<>(used);
      readings = new TreeMap<>(readings);
      firstReadings = new TreeMap<>(firstReadings);
      lost = Set.copyOf(lost);
      gaps = new TreeMap<>(gaps);
    }

    /** Returns how many rounds are cut, from the lowest up, every log of them. */
    public int cut() {
      return ticks.rounds();
    }
  }

  /** Returns the place of a named cell in the workbook, or of its file. */
  public CellRef where(String name) {
    return book.cell(name).map(Found::where).orElse(CellRef.ofFile(book.file()));
  }

  /** Returns how many rounds this revision has. */
  public int rounds() {
    return plan.keySet().stream().mapToInt(Place::round).max().orElse(0);
  }

  /** Returns the logs that this revision was planned with. */
  public List<Log> logsBefore() {
    return job.logs().stream().filter(log -> !tally.bought().contains(log.tag())).toList();
  }

  /** Returns whether a round is begun: a log of it is cut, or a first-laid top was read. */
  public boolean isBegun(int round) {
    return round <= typed.ticks().begun()
        || typed.firstReadings().keySet().stream().anyMatch(corner -> corner.round() == round);
  }

  /** Returns the log that stands in a place: the one used instead, or the one planned. */
  public Optional<String> tag(Place place) {
    return Optional.ofNullable(stands(place.whole()).get(place));
  }

  /**
   * Returns the logs that stand in a place, used instead or planned: one, or a short one each side
   * of an opening; none where nothing is planned.
   */
  public Map<Place, String> stands(Place place) {
    Map<Place, String> logs = new TreeMap<>();
    for (Place each : parts(place)) {
      String planned = plan.get(place).tags().get(each.side() == PlacePart.RIGHT ? 1 : 0);
      logs.put(each, typed.used().getOrDefault(each, planned));
    }
    return logs;
  }

  /** Returns the parts of a place that have a log of their own: itself, or both its sides. */
  public List<Place> parts(Place place) {
    return parts(plan, place);
  }

  static List<Place> parts(Map<Place, Held> plan, Place place) {
    Held held = plan.get(place);
    if (held == null) {
      return List.of();
    }
    return held.isShared() ? List.of(place.side(true), place.side(false)) : List.of(place);
  }

  /** Returns whether another log than the planned one is used in a place. */
  public boolean uses(Place place) {
    return parts(place).stream().anyMatch(typed.used()::containsKey);
  }

  /**
   * Returns whether a place is settled: its round is begun, another log is used there, or it is
   * measured.
   */
  public boolean isSettled(Place place) {
    return isBegun(place.round()) || uses(place) || hewn(place);
  }

  /** Returns whether a diameter was measured in a place. */
  private boolean hewn(Place place) {
    return parts(place).stream()
        .anyMatch(each -> typed.measures().getOrDefault(each, Measures.NONE).hewn());
  }
}
