package roundbook.buying;

import java.util.List;
import roundbook.job.BuildRules;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Says why nothing can be ordered as it was asked. */
final class Refusal {
  private Refusal() {}

  /** Returns a reading without a value; its place is the file, which this room does not know. */
  static <T> Read<T> of(ProblemCode code, String message) {
    return Read.failed(List.of(Problem.of(code, CellRef.ofFile(""), "", message)));
  }

  /** Returns a length with its unit. */
  static String printed(Length length, BuildRules rules) {
    LengthFormat format = LengthFormat.forJob(rules.unit(), rules.printStep());
    return format.mark(length) + " " + rules.unit().symbol();
  }
}
