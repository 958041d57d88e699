package roundbook.app;

import java.io.IOException;
import java.util.Optional;

/**
 * How far a file has come: it goes on with a value, or it has ended.
 *
 * @param value what the next step goes on with; empty when the file has ended
 * @param ended how it ended; empty while it goes on
 * @param <T> what the next step goes on with
 */
record Stage<T>(Optional<T> value, Optional<Outcome> ended) {
  /** One step of a file's work; it ends the file or hands on a value. */
  interface Step<A, B> {
    /** Does it. */
    Stage<B> run(A from) throws IOException;
  }

  /** Returns a file that goes on. */
  static <T> Stage<T> goingOn(T value) {
    return new Stage<>(Optional.of(value), Optional.empty());
  }

  /** Returns a file that has ended, well or not. */
  static <T> Stage<T> ended(Outcome outcome) {
    return new Stage<>(Optional.empty(), Optional.of(outcome));
  }

  /** Does the next step, unless the file has ended. */
  <B> Stage<B> then(Step<T, B> step) throws IOException {
    return value.isPresent() ? step.run(value.get()) : new Stage<>(Optional.empty(), ended);
  }

  /** Returns how it ended, when no step is left. */
  Outcome outcome() {
    return ended.orElseThrow(() -> new IllegalStateException("a file's work has no end"));
  }
}
