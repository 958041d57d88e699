package roundbook.site;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.table.Table;

/**
 * Reads the logs of further tallies, which come to those of a crew workbook.
 *
 * <p>As in a first plan a row with an error is left out and said. A tag that the workbook has
 * already stops the reading, for nobody knows which of two logs it is on.
 */
final class MoreLogs {
  private final List<Log> logs;
  private final boolean failed;

  private MoreLogs(List<Log> logs, boolean failed) {
    this.logs = List.copyOf(logs);
    this.failed = failed;
  }

  /** Reads the tallies; what is wrong with them is added to the problems. */
  static MoreLogs read(
      List<Table> tallies, BuildRules rules, Building building, Asked asked, Problems problems) {
    if (tallies.isEmpty()) {
      return new MoreLogs(List.of(), false);
    }
    Read<List<Log>> read = JobReader.logs(tallies, rules, building, asked);
    read.problems().forEach(problems::add);
    List<Log> logs = read.value().orElse(List.of());
    boolean errors = read.problems().stream().anyMatch(each -> each.severity() == Severity.ERROR);
    return new MoreLogs(logs, errors && logs.isEmpty());
  }

  /** Returns these logs alone if no tag is among the others; says those that are. */
  MoreLogs checked(List<Log> others, Problems problems) {
    Set<String> known = new HashSet<>();
    others.forEach(log -> known.add(key(log)));
    List<Log> twice = logs.stream().filter(log -> known.contains(key(log))).toList();
    for (Log log : twice) {
      problems.add(
          Problem.of(ProblemCode.DUPLICATE_ID, "known", log.origin())
              .with("log", log.tag())
              .found(log.tag())
              .about(log.tag())
              .remedyOf("own-tag"));
    }
    return new MoreLogs(logs, failed || !twice.isEmpty());
  }

  private static String key(Log log) {
    return log.tag().toLowerCase(Locale.ROOT);
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
