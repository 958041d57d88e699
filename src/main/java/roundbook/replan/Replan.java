package roundbook.replan;

import java.util.List;
import roundbook.plan.Plan;

/**
 * A new plan from what was built, with all that is another than before.
 *
 * @param revision the revision that it follows
 * @param before that revision's plan as it was printed
 * @param plan the new plan
 * @param changes the places whose log or cut is another, with the reason
 * @param differences everything that is printed otherwise
 * @param gaps the gaps that were measured, against the plan
 */
public record Replan(
    int revision,
    Plan before,
    Plan plan,
    List<Change> changes,
    List<Difference> differences,
    GapCheck gaps) {
  /** Copies the lists. */
  public Replan {
    changes = List.copyOf(changes);
    differences = List.copyOf(differences);
  }

  /** Returns the same with more known of the new plan. */
  public Replan with(Plan known) {
    return new Replan(revision, before, known, changes, differences, gaps);
  }
}
