package roundbook.buying;

import java.util.List;
import roundbook.job.BuildRules;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Value;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Says why nothing can be ordered as it was asked. */
final class Refusal {
  private Refusal() {}

  /** Returns a problem whose place is the file, which this room does not know. */
  static Problem of(ProblemCode code, String variant) {
    return Problem.of(code, variant, CellRef.ofFile(""));
  }

  /** Returns a reading without a value. */
  static <T> Read<T> read(Problem problem) {
    return Read.failed(List.of(problem));
  }

  /** Returns a length with its unit. */
  static Value printed(Length length, BuildRules rules) {
    return Value.measure(length, LengthFormat.forJob(rules.unit(), rules.printStep()));
  }
}
