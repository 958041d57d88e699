package roundbook.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Doors;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.Setting;
import roundbook.units.Length;

/**
 * A yard with too few long logs and plenty of short ones, for walls of 20 by 14 feet with a door in
 * the south wall: 36 in wide, 82 in high, 100 in from the left corner.
 *
 * <p>Beside the door lie pieces of 103 and of 107 in, so short logs want 107 and 111 in.
 */
public final class ShortYards {
  private final List<Log> logs = new ArrayList<>();
  private final SplittableRandom random;
  private final int rounds;

  private ShortYards(int rounds, long seed) {
    this.rounds = rounds;
    this.random = new SplittableRandom(seed);
  }

  /** Returns a yard for so many rounds, with logs of every kind. */
  public static ShortYards of(int rounds, int longLogs, int crossLogs, int shortLogs) {
    ShortYards yard = new ShortYards(rounds, 7);
    yard.add(longLogs, 252);
    yard.add(crossLogs, 180);
    yard.add(shortLogs, 112);
    return yard;
  }

  /** Returns a job for so many rounds of cylinders of 13 in, with short logs asked for. */
  static Job cylinders(int rounds, List<Integer> lengths) {
    ShortYards yard = new ShortYards(rounds, 7);
    Length thick = Length.ofInches(13);
    for (int length : lengths) {
      Length own = Length.ofInches(length);
      yard.logs.add(
          Jobs.log(
              "L" + (yard.logs.size() + 1),
              own,
              roundbook.job.DiameterProfile.of(own, thick, thick, thick)));
    }
    return yard.job(true);
  }

  private void add(int count, int length) {
    for (int i = 0; i < count; i++) {
      Length mid = Length.ofInchFraction(104 - 24 * i / count + random.nextInt(5), 8);
      Length half = Length.ofInchFraction(length / 40 + random.nextInt(3), 8);
      String tag = "L" + (logs.size() + 1);
      Length own = Length.ofInches(length + random.nextInt(6));
      logs.add(
          Jobs.log(
              tag,
              own,
              roundbook.job.DiameterProfile.of(own, mid.plus(half), mid, mid.minus(half))));
    }
  }

  /** Returns the job, with short logs asked for beside the door or not. */
  public Job job(boolean asked) {
    var rules = Jobs.rules(false).with(Setting.ROUNDS, BigDecimal.valueOf(rounds), Origin.WORKBOOK);
    Opening door = Doors.door("S", 100, 82, asked);
    return new Job(
        rules,
        Jobs.building(Length.ofInches(240), Length.ofInches(168), rules.thickness()),
        logs,
        List.of(door),
        List.of());
  }
}
