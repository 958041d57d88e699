package roundbook.rounds;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import roundbook.rounds.Verifier.Subject;
import roundbook.rounds.Verifier.Verdict;

/** Counts what is checked, by what it is about, and keeps what does not hold. */
final class Checks {
  private static final double TOLERANCE = 1e-6;

  private final Map<Subject, Integer> counts = new EnumMap<>(Subject.class);
  private final List<String> faults = new ArrayList<>();

  /** Counts a check; where it does not hold the fault is kept. */
  void that(Subject subject, boolean holds, String fault) {
    counts.merge(subject, 1, Integer::sum);
    if (!holds) {
      faults.add(fault);
    }
  }

  /** Counts a comparison of two numbers, in inches. */
  void same(Subject subject, String name, double expected, double found) {
    boolean holds = Math.abs(expected - found) < TOLERANCE;
    that(subject, holds, name + " should be " + expected + " in, not " + found);
  }

  Verdict verdict() {
    return new Verdict(counts, faults);
  }
}
