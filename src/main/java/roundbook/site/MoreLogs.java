package roundbook.site;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Stem;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.table.Table;

/**
 * Reads the logs and stems of further tallies, which come to those of a crew workbook.
 *
 * <p>As in a first plan a row with an error is left out and said. A tag that the workbook has
 * already stops the reading, for nobody knows which of two logs it is on.
 */
final class MoreLogs {
  private final List<Log> logs;
  private final List<Stem> stems;
  private final boolean failed;

  private MoreLogs(List<Log> logs, List<Stem> stems, boolean failed) {
    this.logs = List.copyOf(logs);
    this.stems = List.copyOf(stems);
    this.failed = failed;
  }

  /** Reads the tallies; what is wrong with them is added to the problems. */
  static MoreLogs read(
      List<Table> tallies, BuildRules rules, Building building, Asked asked, Problems problems) {
    if (tallies.isEmpty()) {
      return new MoreLogs(List.of(), List.of(), false);
    }
    Read<Job> read = JobReader.logs(tallies, rules, building, asked);
    read.problems().forEach(problems::add);
    List<Log> logs = read.value().map(Job::logs).orElse(List.of());
    List<Stem> stems = read.value().map(job -> job.stems().all()).orElse(List.of());
    boolean errors = read.problems().stream().anyMatch(each -> each.severity() == Severity.ERROR);
    return new MoreLogs(logs, stems, errors && logs.isEmpty() && stems.isEmpty());
  }

  /**
   * Returns these alone if no tag is among the other logs and stems; says those that are.
   *
   * @param others the tags of the workbook's own
   */
  MoreLogs checked(Set<String> others, Problems problems) {
    Set<String> known = others.stream().map(MoreLogs::key).collect(Collectors.toSet());
    Map<String, CellRef> own = new TreeMap<>();
    logs.forEach(log -> own.put(log.tag(), log.origin()));
    stems.forEach(stem -> own.put(stem.tag(), stem.origin()));
    own.keySet().removeIf(tag -> !known.contains(key(tag)));
    own.forEach(
        (tag, origin) ->
            problems.add(
                Problem.of(ProblemCode.DUPLICATE_ID, "known", origin)
                    .with("log", tag)
                    .found(tag)
                    .about(tag)
                    .remedyOf("own-tag")));
    return new MoreLogs(logs, stems, failed || !own.isEmpty());
  }

  private static String key(String tag) {
    return tag.toLowerCase(Locale.ROOT);
  }

  /** Returns the stems in the order they were tallied. */
  List<Stem> stems() {
    return stems;
  }

  /** Returns whether nothing may be planned with them. */
  boolean failed() {
    return failed;
  }

  /** Returns the logs in the order they were tallied. */
  List<Log> logs() {
    return logs;
  }

  /** Returns their tags. */
  Set<String> tags() {
    Set<String> tags = new TreeSet<>();
    logs.forEach(log -> tags.add(log.tag()));
    return tags;
  }
}
