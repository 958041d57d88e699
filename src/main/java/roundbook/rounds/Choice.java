package roundbook.rounds;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Which log goes into which round and wall, and why.
 *
 * @param courses the rounds from the lowest up; empty when not one can be built
 * @param unused the logs without a place, in tally order
 * @param score how good the choice is
 * @param shortage what is missing when fewer rounds stand than were wanted
 * @param problems pins that could not be kept, and the like
 * @param pairs places filled with short logs that were reckoned with, in rounds that are missing
 *     too
 * @param nearness how near the best it is, where that was reckoned
 */
public record Choice(
    List<Course> courses,
    List<Log> unused,
    Score score,
    Optional<Shortage> shortage,
    List<Problem> problems,
    List<FilledPlace> pairs,
    Optional<Nearness> nearness) {
  /** A wall of hewn logs is not built higher (common practice, no published source). */
  public static final Length HIGHEST = Length.of(40, LengthUnit.FOOT);

  /** So high walls are planned where nobody says how high: a storey (likewise common practice). */
  public static final Length STOREY = Length.of(10, LengthUnit.FOOT);

  /** A choice without short logs beside openings. */
  public Choice(
      List<Course> courses,
      List<Log> unused,
      Score score,
      Optional<Shortage> shortage,
      List<Problem> problems) {
    this(courses, unused, score, shortage, problems, List.of(), Optional.empty());
  }

  /** Copies the lists. */
  public Choice {
    pairs = List.copyOf(pairs);
    courses = List.copyOf(courses);
    unused = List.copyOf(unused);
    problems = List.copyOf(problems);
  }

  /**
   * How good a choice is; areas in square inches, lower is better.
   *
   * @param total the one number that the search makes small
   * @param evenness squared errors of the gap at both inside faces and the middle of every joint
   * @param leastGap weighted squares of what gaps fall short of half the gap wanted
   * @param spread weighted squares of what middle diameters of a round differ too much
   * @param inversion weighted squares of what a round is larger than the one below
   * @param waste length cut off beyond the allowance, weighted
   */
  public record Score(
      double total,
      double evenness,
      double leastGap,
      double spread,
      double inversion,
      double waste) {}

  /** Returns the same choice without some of its unused logs, by their tags. */
  public Choice without(Set<String> tags) {
    List<Log> left = unused.stream().filter(log -> !tags.contains(log.tag())).toList();
    return new Choice(courses, left, score, shortage, problems, pairs, nearness);
  }

  /** Returns the same choice with another shortage. */
  public Choice with(Optional<Shortage> other) {
    return new Choice(courses, unused, score, other, problems, pairs, nearness);
  }

  /** Returns the same choice, of which it is known how near the best it is. */
  public Choice with(Nearness known) {
    return new Choice(courses, unused, score, shortage, problems, pairs, Optional.of(known));
  }

  /**
   * Returns the choice of a job whose logs were paired so: without a place are the job's own logs.
   */
  Choice ofPairs(Job job, List<FilledPlace> paired) {
    Set<String> placed =
        courses.stream()
            .flatMap(course -> course.logs().stream())
            .map(log -> log.piece().log().tag())
            .collect(Collectors.toSet());
    List<Log> left = job.logs().stream().filter(log -> !placed.contains(log.tag())).toList();
    List<FilledPlace> now = paired.isEmpty() ? pairs : paired;
    return new Choice(courses, left, score, shortage, problems, now, nearness);
  }

  /** Returns the places that short logs fill. */
  public List<FilledPlace> placedPairs() {
    return courses.stream()
        .flatMap(course -> course.places().stream())
        .filter(FilledPlace::isShared)
        .toList();
  }
}
