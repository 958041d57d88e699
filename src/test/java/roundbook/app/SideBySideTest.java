package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Parts made on two threads come back as if they had been made on one. */
class SideBySideTest {
  @Test
  void eachPartIsMadeOnceAndInItsPlace() {
    AtomicInteger made = new AtomicInteger();
    List<Supplier<Integer>> parts =
        IntStream.range(0, 1000).mapToObj(number -> part(number, made)).toList();
    assertEquals(IntStream.range(0, 1000).boxed().toList(), SideBySide.all(parts));
    assertEquals(1000, made.get());
  }

  private static Supplier<Integer> part(int number, AtomicInteger made) {
    return () -> {
      made.incrementAndGet();
      return number;
    };
  }

  /** Each of the two parts waits until the other has begun, which one thread could not do. */
  @Test
  void twoAreMadeAtOnce() {
    CyclicBarrier both = new CyclicBarrier(2);
    List<String> threads = SideBySide.all(List.of(() -> met(both), () -> met(both)));
    assertNotEquals(threads.get(0), threads.get(1));
  }

  private static String met(CyclicBarrier both) {
    try {
      both.await(60, TimeUnit.SECONDS);
    } catch (Exception alone) {
      throw new IllegalStateException("the other part was not begun", alone);
    }
    return Thread.currentThread().getName();
  }

  @Test
  void whatAPartThrowsIsThrown() {
    RuntimeException fault = new IllegalArgumentException("of a part");
    Error grave = new OutOfMemoryError("of a part");
    assertSame(fault, assertThrows(RuntimeException.class, () -> SideBySide.all(failing(fault))));
    assertSame(grave, assertThrows(Error.class, () -> SideBySide.all(failing(grave))));
  }

  private static List<Supplier<String>> failing(Throwable fault) {
    return List.of(
        () -> "whole",
        () -> {
          if (fault instanceof Error grave) {
            throw grave;
          }
          throw (RuntimeException) fault;
        },
        () -> "whole");
  }
}
