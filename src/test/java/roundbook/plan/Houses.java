package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import roundbook.balance.Effort;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.Doors;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stand;
import roundbook.job.Wall;
import roundbook.rounds.BalancedChooser;
import roundbook.units.Length;

/** Houses of more than four walls, planned with few moves from seeded logs. */
public final class Houses {
  private static final Effort SHORT = new Effort(20_000, 1, () -> false, done -> {});

  private Houses() {}

  private static Length in(long inches) {
    return Length.ofInches(inches);
  }

  private static Wall wall(String name, long outside, int pen) {
    boolean first = name.startsWith("N") || name.startsWith("S");
    Stand stand = new Stand(pen, List.of(), Optional.empty());
    return new Wall(name, in(outside), first, in(6), "", stand);
  }

  /**
   * Returns the plan of 28 by 20 ft with a wing of 14 by 12 ft outside of S, at its right end or 7
   * ft from the left.
   */
  public static Plan wing(boolean ell, String reentrant, long seed) {
    return new Planner(new BalancedChooser()).plan(job(ell, reentrant, seed), SHORT);
  }

  /**
   * Returns the plan of the wing 7 ft from the left with a door in its left side, 60 in from the
   * left corner and 36 wide.
   */
  public static Plan wingWithDoor() {
    Job job = job(false, "drain", 1);
    Job door = Doors.with(job, Doors.door("W2", 60 + 6, 30, false));
    return new Planner(new BalancedChooser()).plan(door, SHORT);
  }

  private static Job job(boolean ell, String reentrant, long seed) {
    List<Wall> walls = new ArrayList<>();
    walls.add(wall("N", 336, 1));
    walls.add(wall("E", ell ? 384 : 240, 1));
    walls.add(wall("S", 336, 1));
    walls.add(wall("W", 240, 1));
    Stand on = new Stand(2, List.of("S"), Optional.of(in(ell ? 168 : 84)));
    walls.add(wall("S2", 168, 2).at(on));
    walls.add(wall("W2", 150, 2));
    if (!ell) {
      walls.add(wall("E2", 150, 2));
    }
    BuildRules rules = Jobs.rules(false).with(Setting.REENTRANT, reentrant, Origin.OPTION);
    return new Job(rules, new Building(Building.inOrder(walls)), logs(seed), List.of(), List.of());
  }

  /** Returns the plan of 32 by 18 ft with a partition 150 in from the left corner of N. */
  public static Plan parted(long seed) {
    return parted(seed, false);
  }

  /** Returns the plan of the same with another one across it, 90 in from the left corner of E. */
  public static Plan crossed(long seed) {
    return parted(seed, true);
  }

  private static Plan parted(long seed, boolean crossed) {
    List<Wall> walls = new ArrayList<>();
    walls.add(wall("N", 384, 1));
    walls.add(wall("E", 216, 1));
    walls.add(wall("S", 384, 1));
    walls.add(wall("W", 216, 1));
    Stand between = new Stand(1, List.of("N", "S"), Optional.of(in(150)));
    walls.add(new Wall("P1", in(216), false, in(6), "", between));
    if (crossed) {
      Stand across = new Stand(1, List.of("E", "W"), Optional.of(in(90)));
      walls.add(new Wall("P2", in(384), true, in(6), "", across));
    }
    Building building = new Building(Building.inOrder(walls));
    Job job = new Job(Jobs.rules(false), building, logs(seed), List.of(), List.of());
    return new Planner(new BalancedChooser()).plan(job, SHORT);
  }

  private static List<Log> logs(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    long[] lengths = {398, 398, 350, 254, 254, 350, 182, 182, 164};
    List<Log> logs = new ArrayList<>();
    for (int i = 0; i < 45; i++) {
      double mid = 12.75 + random.nextInt(5) / 4.0;
      String butt = String.valueOf(mid + 1);
      String tip = String.valueOf(mid - .75);
      Length length = in(lengths[i % lengths.length] + random.nextInt(12));
      logs.add(Jobs.log("L" + i, length, butt, String.valueOf(mid), tip));
    }
    return logs;
  }
}
