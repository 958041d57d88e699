package roundbook.rounds;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import roundbook.job.Job;
import roundbook.notch.Notch;
import roundbook.stack.Course;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Finds the number of rounds whose own plan comes nearest to the wall height wanted.
 *
 * <p>A plan's height is {@code b_n + D_n / 2}: the centre line of the last second-laid logs and
 * half their size. The first number is a guess; the plan of it is made and its height taken. Where
 * it misses by more than a third of a course, the number that should come nearer is planned too,
 * and the nearer one kept, for another number of rounds takes other logs. On a tie the fewer rounds
 * stand.
 *
 * @param job the job
 * @param height the wall height wanted
 * @param plan chooses logs for a number of rounds
 */
record ByHeight(Job job, Length height, IntFunction<Choice> plan) {
  /** Returns the choice of the best number, beginning with a guess. */
  Choice from(int guess) {
    Choice best = plan.apply(guess);
    Set<Integer> tried = new HashSet<>(Set.of(guess));
    while (!isShort(best) && !best.courses().isEmpty()) {
      int next = Math.max(1, best.courses().size() + rounds(best));
      if (!tried.add(next)) {
        return best;
      }
      Choice other = plan.apply(next);
      if (isShort(other) ? !worthMore(best) : !isNearer(other, best)) {
        return best;
      }
      best = other;
    }
    return best.courses().isEmpty() ? best : goal(best);
  }

  /** Sets the rounds wanted of a choice that ran out of logs by the height of what stands. */
  private Choice goal(Choice choice) {
    int built = choice.courses().size();
    double more = miss(choice) / course(choice);
    int wanted = built + Math.max(0, Math.toIntExact(Math.round(more)));
    Optional<Shortage> shortage =
        wanted == built
            ? Optional.empty()
            : new Wanted(PairedJob.of(job, choice.pairs())).shortage(wanted, built);
    return choice.with(shortage);
  }

  private static boolean isShort(Choice choice) {
    return choice.shortage().isPresent();
  }

  /** Returns by how many rounds another number should come nearer; zero when none should. */
  private int rounds(Choice choice) {
    double courses = miss(choice) / course(choice);
    if (Math.abs(courses) <= 1.0 / 3) {
      return 0;
    }
    int whole = Math.toIntExact(Math.round(courses));
    return whole != 0 ? whole : courses > 0 ? 1 : -1;
  }

  /** Returns whether a further round, if there were the logs, would come nearer. */
  private boolean worthMore(Choice choice) {
    return miss(choice) > course(choice) / 2;
  }

  private boolean isNearer(Choice other, Choice than) {
    double one = Math.abs(miss(other));
    double two = Math.abs(miss(than));
    return one < two || one == two && other.courses().size() < than.courses().size();
  }

  /** Returns whether a choice comes as near to the height as another, or near enough. */
  boolean isAsNear(Choice choice, Choice than) {
    return rounds(choice) == 0 || Math.abs(miss(choice)) <= Math.abs(miss(than));
  }

  private double miss(Choice choice) {
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses(), job.built());
    return height.minus(stack.wallHeight()).inches();
  }

  /** Returns the height of one more round like the last, in inches: {@code D + g}. */
  private static double course(Choice choice) {
    Course last = choice.courses().get(choice.courses().size() - 1);
    Notch notch = last.notch();
    return notch.lower().plus(notch.upper()).times(2).inches();
  }
}
