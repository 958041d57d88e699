package roundbook.problem;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes a problem again of what a workbook carried of it. */
final class CarriedProblem {
  private static final int PARTS = 5;

  private CarriedProblem() {}

  /**
   * Returns the problem; empty where its parts are not of their kinds.
   *
   * @param carried severity, log, found, sentence and remedies, in turn
   */
  static Optional<Problem> of(ProblemCode code, CellRef where, Phrase carried) {
    List<Value> parts = carried.values();
    boolean sound =
        parts.size() == PARTS
            && parts.get(0) instanceof Value.Text
            && parts.get(1) instanceof Value.Text
            && parts.get(3) instanceof Phrase
            && parts.get(4) instanceof Value.Series;
    return sound
        ? severity(text(parts.get(0))).map(grave -> made(code, where, grave, parts))
        : Optional.empty();
  }

  private static Problem made(ProblemCode code, CellRef where, Severity grave, List<Value> parts) {
    List<Phrase> remedies =
        ((Value.Series) parts.get(4))
            .values().stream().filter(Phrase.class::isInstance).map(Phrase.class::cast).toList();
    return new Problem(
        where, grave, code, text(parts.get(1)), parts.get(2), (Phrase) parts.get(3), remedies);
  }

  private static String text(Value value) {
    return ((Value.Text) value).text();
  }

  private static Optional<Severity> severity(String word) {
    return Stream.of(Severity.values()).filter(each -> each.word().equals(word)).findFirst();
  }
}
