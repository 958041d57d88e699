package roundbook.problem;

import java.util.List;
import java.util.Optional;

/**
 * What was read of an input, with every problem found on the way.
 *
 * @param value the value, empty when nothing usable was read
 * @param problems every problem, in file order
 * @param <T> what was read
 */
public record Read<T>(Optional<T> value, List<Problem> problems) {
  /** Copies the list. */
  public Read {
    problems = List.copyOf(problems);
  }

  /** Returns a value with the problems found on the way. */
  public static <T> Read<T> of(T value, List<Problem> problems) {
    return new Read<>(Optional.of(value), problems);
  }

  /** Returns problems only. */
  public static <T> Read<T> failed(List<Problem> problems) {
    return new Read<>(Optional.empty(), problems);
  }
}
