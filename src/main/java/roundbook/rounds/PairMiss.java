package roundbook.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;
import roundbook.stack.Course;
import roundbook.stack.EndFit;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * What two short logs beside an opening do not keep.
 *
 * @param pair the place with both of them
 * @param gap the gap furthest outside its limits; empty where they keep all
 * @param flagged whether an end of theirs is flagged
 */
public record PairMiss(FilledPlace pair, Optional<Gap> gap, boolean flagged)
    implements Comparable<PairMiss> {
  /**
   * A gap outside its limits.
   *
   * @param over whether it is the one over the pair, not under it
   * @param beyond where it is and by how much
   */
  public record Gap(boolean over, Joint.Beyond beyond) {}

  private static final Effort LOOK = Effort.usual(1).withMoves(6_000);

  /** Returns what a pair of a stack does not keep. */
  static PairMiss of(Job job, Stack stack, FilledPlace pair) {
    Optional<Gap> gap =
        stack.joints(pair.wall(), pair.round()).stream()
            .flatMap(joint -> gap(job, joint, pair).stream())
            .max(Comparator.comparing(each -> each.beyond().by()));
    boolean flagged =
        new EndFit(job.rules(), job.building())
            .isFlagged(stack.courses().get(pair.round() - 1), pair);
    return new PairMiss(pair, gap, flagged);
  }

  /** Returns whether the pair keeps every gap within its limits and neither end is flagged. */
  public boolean keepsAll() {
    return gap.isEmpty() && !flagged;
  }

  private static Optional<Gap> gap(Job job, Joint joint, FilledPlace pair) {
    return joint
        .beyond(job.rules())
        .map(beyond -> new Gap(joint.lower().place().equals(pair.place()), beyond));
  }

  /**
   * Returns, for each place of a choice that an opening with short logs cuts through and that has
   * one log all the same, how near the best pair of the logs without a place comes; none where
   * there are no two for it. Ordered by round, then wall.
   */
  public static List<PairMiss> nearest(Job job, Choice choice, Stack stack) {
    List<FilledPlace> places =
        choice.courses().stream().flatMap(course -> course.places().stream()).toList();
    List<Place> paired = choice.pairs().stream().map(FilledPlace::place).toList();
    List<PairMiss> nearest = new ArrayList<>();
    OpeningPlace.of(job, stack)
        .forEach(
            (place, open) -> {
              List<FilledPlace> others =
                  places.stream().filter(each -> !each.place().equals(place)).toList();
              if (!paired.contains(place) && !open.isSettled(job)) {
                new OpeningPieces(
                        job, choice.courses().size(), List.of(open), others, choice.unused())
                    .chosen(OpeningPieces.FORCED, LOOK).stream()
                        .flatMap(List::stream)
                        .map(pair -> of(job, laid(job, choice, pair), pair))
                        .forEach(nearest::add);
              }
            });
    return nearest;
  }

  private static Stack laid(Job job, Choice choice, FilledPlace pair) {
    List<Course> courses = new ArrayList<>(choice.courses());
    List<FilledPlace> places =
        courses.get(pair.round() - 1).places().stream()
            .map(place -> place.place().equals(pair.place()) ? pair : place)
            .toList();
    courses.set(pair.round() - 1, Course.of(pair.round(), places, job));
    return Stack.of(job.rules(), job.building(), courses, job.built());
  }

  /** Orders by how far outside its limits the gap is, flagged ends alone first. */
  @Override
  public int compareTo(PairMiss other) {
    return beyond().compareTo(other.beyond());
  }

  private Length beyond() {
    return gap.map(each -> each.beyond().by()).orElse(Length.ZERO);
  }
}
