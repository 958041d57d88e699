package roundbook.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.stack.Course;
import roundbook.stack.PlacedLog;

/**
 * Chooses logs by matching lengths first, then swapping logs while that evens the gaps.
 *
 * <p>Swaps are accepted by the rule of simulated annealing with a falling temperature, from a
 * seeded generator, so the same job gives the same plan on any machine.
 */
public final class SwapChooser implements Chooser {
  private static final long USUAL_MOVES = 400_000;
  private static final double HOT = 3;
  private static final double COLD = 0.005;

  @Override
  public Choice choose(Job job, Effort effort) {
    int wanted = new Wanted(job).rounds();
    Places places = new Places(job, wanted);
    while (places.rounds() > 0 && Arrays.stream(places.match()).anyMatch(log -> log < 0)) {
      places = new Places(job, places.rounds() - 1);
    }
    Optional<Shortage> shortage = new Wanted(job).shortage(wanted, places.rounds());
    if (places.rounds() == 0) {
      Choice.Score none = new Choice.Score(0, 0, 0, 0, 0, 0);
      return new Choice(List.of(), job.logs(), none, shortage, List.of(), problems(job, 0));
    }
    Ground ground = search(job, places, effort);
    return choice(job, places, ground, shortage);
  }

  private static Ground search(Job job, Places places, Effort effort) {
    int[] logOf = places.match();
    Piece[] laid = new Piece[logOf.length];
    for (int place = 0; place < laid.length; place++) {
      laid[place] = places.pieces(logOf[place], place).get(0);
    }
    Ground ground = new Ground(job, places, laid);
    Swaps swaps = new Swaps(job, places, ground, logOf, new SplittableRandom(effort.seed()));
    long moves = effort.moves() == 0 ? USUAL_MOVES : effort.moves();
    double fall = StrictMath.pow(COLD / HOT, 1.0 / moves);
    double heat = HOT;
    for (long move = 0;
        move < moves && !(move % 4096 == 0 && effort.stop().getAsBoolean());
        move++) {
      swaps.tryOne(heat);
      heat *= fall;
      if (move % 4096 == 0) {
        effort.progress().accept((double) move / moves);
      }
    }
    return swaps.best();
  }

  private static Choice choice(Job job, Places places, Ground ground, Optional<Shortage> shortage) {
    List<Course> courses = new ArrayList<>();
    List<Log> unused = new ArrayList<>(job.logs());
    int walls = places.walls().size();
    for (int round = 1; round <= places.rounds(); round++) {
      List<PlacedLog> logs = new ArrayList<>();
      for (int i = 0; i < walls; i++) {
        Piece piece = ground.at((round - 1) * walls + i);
        boolean start = job.rules().clockwise(round);
        logs.add(new PlacedLog(piece, places.walls().get(i), round, start));
        unused.remove(piece.log());
      }
      courses.add(Course.of(round, logs, job.rules()));
    }
    return new Choice(
        courses,
        unused,
        ground.score(),
        shortage,
        Reasons.of(courses),
        problems(job, places.rounds()));
  }

  private static List<Problem> problems(Job job, int rounds) {
    return job.pins().stream()
        .flatMap(
            pin ->
                Places.reasonAgainst(pin, job, rounds)
                    .map(why -> Problem.of(ProblemCode.BAD_PIN, pin.origin(), pin.log(), why))
                    .stream())
        .toList();
  }
}
