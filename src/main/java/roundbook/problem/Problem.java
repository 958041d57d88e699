package roundbook.problem;

import java.util.Objects;

/**
 * One thing that is wrong, with its place and its remedy.
 *
 * @param where the place
 * @param severity how much it matters here
 * @param code what kind of problem it is
 * @param log the tag of the log concerned, or empty
 * @param found what stood in the cell, or empty
 * @param message what is wrong, in one sentence without a closing stop
 * @param remedy what the person can do, in one or two sentences
 */
public record Problem(
    CellRef where,
    Severity severity,
    ProblemCode code,
    String log,
    String found,
    String message,
    String remedy) {

  /** Checks that nothing is missing. */
  public Problem {
    Objects.requireNonNull(where);
    Objects.requireNonNull(severity);
    Objects.requireNonNull(code);
  }

  /** Returns a problem with its code's own severity and remedy. */
  public static Problem of(ProblemCode code, CellRef where, String found, String message) {
    return new Problem(where, code.severity(), code, "", found, message, code.remedy());
  }

  /** Returns the same problem at another place. */
  public Problem at(CellRef place) {
    return new Problem(place, severity, code, log, found, message, remedy);
  }

  /** Returns the same problem with another severity. */
  public Problem as(Severity other) {
    return new Problem(where, other, code, log, found, message, remedy);
  }

  /** Returns the same problem with another remedy. */
  public Problem remedy(String other) {
    return new Problem(where, severity, code, log, found, message, other);
  }

  /** Returns the same problem told of a log. */
  public Problem about(String tag) {
    return new Problem(where, severity, code, tag, found, message, remedy);
  }

  /** Compares as any record does, without what a record must first link to do so. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Problem problem
        && where.equals(problem.where)
        && severity == problem.severity
        && code == problem.code
        && Objects.equals(log, problem.log)
        && Objects.equals(found, problem.found)
        && Objects.equals(message, problem.message)
        && Objects.equals(remedy, problem.remedy);
  }

  @Override
  public int hashCode() {
    return where.hashCode() * 31 + Objects.hashCode(message);
  }

  /** Returns the one line shown on a terminal. */
  @Override
  public String toString() {
    String place = where.toString();
    return (place.isEmpty() ? "" : place + ": ")
        + severity.word()
        + " "
        + code.id()
        + ": "
        + message
        + "."
        + (remedy.isEmpty() ? "" : " " + remedy);
  }
}
