package roundbook.app;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * Makes parts on two threads, of which no part needs another.
 *
 * <p>Both go through all parts in the same order; a part that one has begun is passed over by the
 * other. What is made comes back in the order of the parts, so that it makes no difference who made
 * which.
 */
final class SideBySide {
  private SideBySide() {}

  /**
   * Makes all parts.
   *
   * @return what was made, in the order of the parts
   * @throws RuntimeException what the first part that failed threw; errors likewise
   */
  static <T> List<T> all(List<Supplier<T>> parts) {
    List<FutureTask<T>> tasks = parts.stream().map(part -> new FutureTask<>(part::get)).toList();
    Thread second = new Thread(() -> tasks.forEach(FutureTask::run), "second");
    second.setDaemon(true);
    second.start();
    tasks.forEach(FutureTask::run);
    return tasks.stream().map(SideBySide::made).toList();
  }

  private static <T> T made(FutureTask<T> task) {
    try {
      return task.get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the run was interrupted", stopped);
    } catch (ExecutionException failed) {
      throw thrown(failed.getCause());
    }
  }

  /** Throws what a part threw, as it would have come without a second thread. */
  private static RuntimeException thrown(Throwable fault) {
    if (fault instanceof Error grave) {
      throw grave;
    }
    return fault instanceof RuntimeException plain ? plain : new IllegalStateException(fault);
  }
}
