package roundbook.intake.house;

import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

/** Checks that a crane's place is told whole, and by a wall that there is. */
public final class CranePlace {
  private CranePlace() {}

  /** Returns what keeps the crane's place from being used; empty where nothing does. */
  public static Optional<Problem> problem(BuildRules rules, Building building) {
    String wall = rules.text(Setting.CRANE_WALL).strip();
    boolean off = rules.optionalLength(Setting.CRANE_OFF).isPresent();
    CellRef where = CellRef.ofFile("");
    if (!wall.isEmpty() && building.wall(wall).filter(each -> !each.isPartition()).isEmpty()) {
      return Optional.of(
          Problem.of(ProblemCode.BAD_SETTING, "crane-wall", where).with("wall", wall).found(wall));
    }
    if (!wall.isEmpty() && building.pens().size() > 1) {
      return Optional.of(Problem.of(ProblemCode.BAD_SETTING, "crane-pens", where).found(wall));
    }
    return wall.isEmpty() == off
        ? Optional.of(Problem.of(ProblemCode.BAD_SETTING, "crane-half", where))
        : Optional.empty();
  }
}
