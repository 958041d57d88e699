package roundbook.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing that is wrong, with its place and its remedy; what is said of it is told by {@code
 * problem.words}.
 *
 * @param where the place
 * @param severity how much it matters here
 * @param code what kind of problem it is
 * @param log the tag of the log concerned, or empty
 * @param found what stood in the cell, or was measured, or {@link Value#NONE}
 * @param said what is wrong: one sentence without a closing stop
 * @param remedies what the person can do, a sentence or two each
 */
public record Problem(
    CellRef where,
    Severity severity,
    ProblemCode code,
    String log,
    Value found,
    Phrase said,
    List<Phrase> remedies) {

  /** Checks that nothing is missing. */
  public Problem {
    Objects.requireNonNull(where);
    Objects.requireNonNull(severity);
    Objects.requireNonNull(code);
    remedies = List.copyOf(remedies);
  }

  /** Returns a problem with its code's own sentence, severity and remedy. */
  public static Problem of(ProblemCode code, CellRef where) {
    return of(code, where, Phrase.of(code.id()));
  }

  /**
   * Returns a problem with one of the several sentences of its code.
   *
   * @param variant which of them; empty where there is but one
   */
  public static Problem of(ProblemCode code, String variant, CellRef where) {
    return of(code, where, Phrase.of(variant.isEmpty() ? code.id() : code.id() + "." + variant));
  }

  /** Returns a problem that says a phrase, with its code's severity and remedy. */
  public static Problem of(ProblemCode code, CellRef where, Phrase said) {
    List<Phrase> remedies = List.of(code.remedy());
    return new Problem(where, code.severity(), code, "", Value.NONE, said, remedies);
  }

  /** Returns the same problem with a value that its sentence names. */
  public Problem with(String name, Value value) {
    return new Problem(where, severity, code, log, found, said.with(name, value), remedies);
  }

  /** Returns the same problem with a text that its sentence names. */
  public Problem with(String name, String text) {
    return with(name, Value.text(text));
  }

  /** Returns the same problem with a whole number that its sentence names. */
  public Problem with(String name, long count) {
    return with(name, Value.count(count));
  }

  /** Returns the same problem at another place. */
  public Problem at(CellRef place) {
    return new Problem(place, severity, code, log, found, said, remedies);
  }

  /** Returns the same problem with another severity. */
  public Problem as(Severity other) {
    return new Problem(where, other, code, log, found, said, remedies);
  }

  /** Returns the same problem with what stood in its cell. */
  public Problem found(String text) {
    return found(Value.text(text));
  }

  /** Returns the same problem with what was found. */
  public Problem found(Value value) {
    return new Problem(where, severity, code, log, value, said, remedies);
  }

  /** Returns the same problem with other remedies, or with none. */
  public Problem remedy(Phrase... others) {
    return new Problem(where, severity, code, log, found, said, List.of(others));
  }

  /** Returns the same problem with the remedy of a key that begins with {@code remedy.}. */
  public Problem remedyOf(String key) {
    return remedy(Phrase.of("remedy." + key));
  }

  /** Returns the same problem with one more remedy after its own. */
  public Problem alsoRemedy(Phrase more) {
    List<Phrase> all = new ArrayList<>(remedies);
    all.add(more);
    return remedy(all.toArray(Phrase[]::new));
  }

  /** Returns the same problem told of a log. */
  public Problem about(String tag) {
    return new Problem(where, severity, code, tag, found, said, remedies);
  }

  /** Returns all but the place as a workbook carries it, for {@link #ofCarried}. */
  public String carried() {
    return Phrase.of(code.id())
        .with("severity", severity.word())
        .with("log", log)
        .with("found", found)
        .with("said", said)
        .with("remedies", Value.list("list.semicolon", remedies))
        .toString();
  }

  /** Reads what {@link #carried} wrote; empty where it is none, for anybody can type over it. */
  public static Optional<Problem> ofCarried(String written, CellRef where) {
    return Phrase.parse(written)
        .flatMap(
            carried ->
                ProblemCode.of(carried.key())
                    .flatMap(code -> CarriedProblem.of(code, where, carried)));
  }

  /** Compares as any record does, without what a record must first link to do so. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Problem problem
        && where.equals(problem.where)
        && severity == problem.severity
        && code == problem.code
        && Objects.equals(log, problem.log)
        && found.toString().equals(problem.found.toString())
        && said.equals(problem.said)
        && remedies.equals(problem.remedies);
  }

  @Override
  public int hashCode() {
    return where.hashCode() * 31 + said.hashCode();
  }

  /** Returns place, gravity, code and what is said as it is carried, for a person who debugs. */
  @Override
  public String toString() {
    return where + ": " + severity.word() + " " + said + " " + remedies;
  }
}
