package roundbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Stem;
import roundbook.job.Stems;
import roundbook.plan.Plan;
import roundbook.plan.Taken;
import roundbook.problem.CellRef;
import roundbook.stack.PlacedLog;

/**
 * The pile that the jobs of a run share, and who has taken which log of it.
 *
 * <p>Jobs choose one after the other in the order of the command line, so what each gets does not
 * depend on how many files run at once. A log is known by its place in the yard's files, for each
 * job reads them under its own settings. Only logs with a place, in a wall or beside an opening,
 * are taken; spares are everyone's.
 */
final class Yard {
  private final Set<String> files;
  private final List<Path> jobs;
  private final Map<YardLog, Owner> owners = new LinkedHashMap<>();

  /**
   * A pile of these files.
   *
   * @param piles the yard's tallies; none when nothing is shared
   * @param jobs the jobs in the order in which they choose
   */
  Yard(List<Path> piles, List<Path> jobs) {
    this.jobs = List.copyOf(jobs);
    this.files =
        piles.stream().map(file -> file.getFileName().toString()).collect(Collectors.toSet());
  }

  /** A log's row in the yard, and which one it is of a row that stands for several. */
  private record YardLog(CellRef row, int number) {}

  private record Owner(Path job, PlacedLog placed) {}

  /** Which job cut each stem of the pile, by its row. */
  private final Map<CellRef, Path> cut = new HashMap<>();

  /** Returns whether other jobs choose after this one. */
  boolean isSharedAfter(Path file) {
    return jobs.indexOf(file) < jobs.size() - 1;
  }

  /** Returns a job with the logs that no other has taken. */
  Job left(Path file, Job job) {
    Set<String> gone =
        taken(file, job).stream().map(each -> each.log().tag()).collect(Collectors.toSet());
    List<Stem> stems =
        job.stems().all().stream()
            .filter(stem -> cut.getOrDefault(stem.origin(), file).equals(file))
            .toList();
    return job.withLogs(job.logs().stream().filter(log -> !gone.contains(log.tag())).toList())
        .withStems(Stems.of(stems));
  }

  /** Gives a job the logs of its plan: those with a place and those beside openings. */
  void take(Path file, Job job, Plan plan) {
    Map<String, PlacedLog> placed = new HashMap<>();
    plan.pieces().stream()
        .flatMap(piece -> piece.logs().stream())
        .forEach(log -> take(file, plan.job(), log, placed));
    spots(job)
        .forEach(
            (spot, log) -> {
              if (placed.containsKey(log.tag())) {
                owners.put(spot, new Owner(file, placed.get(log.tag())));
              }
            });
  }

  /** Takes a log, and of a piece the whole stem. */
  private void take(Path file, Job job, PlacedLog log, Map<String, PlacedLog> placed) {
    placed.put(tag(log), log);
    job.stems()
        .of(log.piece().log())
        .ifPresent(
            stem -> {
              placed.put(stem.tag(), log);
              if (files.contains(stem.origin().file())) {
                cut.put(stem.origin(), file);
              }
            });
  }

  private static String tag(PlacedLog placed) {
    return placed.piece().log().tag();
  }

  /** Returns what other jobs have taken, as this one reads it. */
  List<Taken> taken(Path file, Job job) {
    List<Taken> taken = new ArrayList<>();
    spots(job)
        .forEach(
            (spot, log) -> {
              Owner owner = owners.get(spot);
              if (owner != null && !owner.job().equals(file)) {
                PlacedLog placed = owner.placed();
                String name = owner.job().getFileName().toString();
                taken.add(new Taken(log, name, placed.round(), placed.wall().name()));
              }
            });
    return taken;
  }

  private Map<YardLog, Log> spots(Job job) {
    Map<CellRef, Integer> counts = new HashMap<>();
    Map<YardLog, Log> spots = new LinkedHashMap<>();
    for (Log log : job.logs()) {
      if (files.contains(log.origin().file())) {
        CellRef row = log.origin().atColumn(0);
        spots.put(new YardLog(row, counts.merge(row, 1, Integer::sum)), log);
      }
    }
    return spots;
  }
}
