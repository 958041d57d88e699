package roundbook.takeoff;

import java.util.List;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.wood.RoundProfile;

/**
 * What the first logs lie on.
 *
 * <p>Flat: the first-laid logs are sawn flat k = L₁ below their centre lines, and the foundation
 * under the others is higher by {@code (D₁ + g) / 2}. Level: the same, with a filler of {@code k +
 * g/2} under the crown of the others. Starter: half logs of the same size, flat at their centre
 * line, lie under the second-laid logs; every neck is full and the first crowns clear the
 * foundation by {@code g/2}.
 *
 * @param kind flat, level or starter
 * @param step by how much the foundation is higher under the second-laid walls; zero where it is
 *     level
 * @param logs every log of the first round with the room or the flat under it
 */
public record Bed(String kind, Length step, List<Under> logs) {
  private static final String STARTER = "starter";

  /** Copies the list. */
  public Bed {
    logs = List.copyOf(logs);
  }

  /**
   * What is under one log of the first round, at its trimmed butt, middle and trimmed tip.
   *
   * @param log the log
   * @param flat whether its bed is sawn flat; else the widths are heights to fill
   * @param butt width of the flat, or height from the foundation or the half log under it to the
   *     underside, at the butt
   * @param mid in the middle
   * @param tip at the tip
   */
  public record Under(FilledPlace log, boolean flat, Length butt, Length mid, Length tip) {}

  /**
   * Returns whether a log's underside is sawn flat at its lower mark: first-laid logs all along,
   * second-laid ones between their shoulders, and only where the foundation is stepped.
   */
  public static boolean isFlat(BuildRules rules, int round, Wall wall) {
    String kind = rules.text(Setting.FIRST_BED);
    boolean flat = wall.laidFirst() ? !kind.equals(STARTER) : rules.stepsFoundation();
    return round == 1 && flat;
  }

  static Bed of(Stack stack, Starter starter) {
    String kind = stack.rules().text(Setting.FIRST_BED);
    Length step = stack.rules().stepsFoundation() ? stack.foundationStep() : Length.ZERO;
    List<Under> logs =
        stack.courses().get(0).places().stream()
            .map(log -> under(stack, starter, log, step))
            .toList();
    return new Bed(kind, step, logs);
  }

  /** Returns whether half-log starters lie under the second-laid walls. */
  public boolean onStarter() {
    return kind.equals(STARTER);
  }

  private static Under under(Stack stack, Starter starter, FilledPlace log, Length step) {
    boolean flat = isFlat(stack.rules(), log.round(), log.wall());
    RoundProfile profile = WallProfiles.butt(log);
    Length[] at = new Length[3];
    for (int i = 0; i < at.length; i++) {
      double diameter = profile.at(profile.length() * i / 2);
      Length fromButt = log.trimmed().times(i).dividedBy(2);
      Length under = starter.under(log.wall()).map(half -> crown(log, half, fromButt)).orElse(step);
      at[i] = flat ? flatWidth(stack, log, diameter) : room(stack, log, diameter, under);
    }
    return new Under(log, flat, at[0], at[1], at[2]);
  }

  /** Returns how high the half log under a place reaches, at a distance from the place's butt. */
  private static Length crown(FilledPlace log, FilledPlace half, Length fromButt) {
    Length fromLeft = log.buttAtStart() ? log.trimmed().minus(fromButt) : fromButt;
    return half.fromLeft(fromLeft).dividedBy(2);
  }

  /** Returns the width of the flat k below the centre line: 2 √((d/2)² − k²), T at most. */
  private static Length flatWidth(Stack stack, FilledPlace log, double diameter) {
    Notch notch = stack.courses().get(0).notch();
    double k = notch.lower().inches();
    double half = Math.sqrt(Math.max(0, diameter * diameter / 4 - k * k));
    return WallProfiles.inches(2 * half).least(log.wall().thickness());
  }

  private static Length room(Stack stack, FilledPlace log, double diameter, Length step) {
    Length foundation = log.wall().laidFirst() ? Length.ZERO : step;
    return stack.centre(log).minus(WallProfiles.inches(diameter / 2)).minus(foundation);
  }
}
