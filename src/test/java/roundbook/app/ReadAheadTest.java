package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.RowSource;
import roundbook.table.RowTaker;
import roundbook.table.Table;

/** Rows that are read ahead come as they would without it, however a reading ends. */
class ReadAheadTest {
  private static final int MANY = 20_000;

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 1023, 1024, 1025, MANY})
  void rowsComeInOrderOnTheCallersThread(int count) {
    List<Integer> numbers = new ArrayList<>();
    Thread caller = Thread.currentThread();
    Optional<Problem> problem =
        table(taker -> rows(count, taker))
            .forEach(
                row -> {
                  assertSame(caller, Thread.currentThread());
                  numbers.add(row.number());
                });
    assertTrue(problem.isEmpty());
    assertEquals(IntStream.rangeClosed(1, count).boxed().toList(), numbers);
  }

  @Test
  void whatIsWrongWithTheFileIsSaidAfterItsRows() {
    Problem cut = Problem.of(ProblemCode.UNREADABLE, "end", CellRef.ofFile("f"));
    List<Integer> numbers = new ArrayList<>();
    RowSource source =
        taker -> {
          rows(1500, taker);
          return Optional.of(cut);
        };
    assertEquals(Optional.of(cut), table(source).forEach(row -> numbers.add(row.number())));
    assertEquals(1500, numbers.size());
  }

  @Test
  void whatTheSourceThrowsIsThrownAfterItsRows() {
    List<Integer> numbers = new ArrayList<>();
    RowSource source =
        taker -> {
          rows(1500, taker);
          throw new OutOfMemoryError("full");
        };
    Table table = table(source);
    assertThrows(OutOfMemoryError.class, () -> table.forEach(row -> numbers.add(row.number())));
    assertEquals(1500, numbers.size());
  }

  @Test
  void aTakerThatThrowsEndsTheReading() {
    AtomicBoolean toItsEnd = new AtomicBoolean();
    AtomicBoolean closed = new AtomicBoolean();
    RowSource source =
        taker -> {
          try {
            rows(MANY, taker);
            toItsEnd.set(true);
          } finally {
            closed.set(true);
          }
          return Optional.empty();
        };
    Table table = table(source);
    ArithmeticException own = new ArithmeticException("own fault");
    ArithmeticException thrown =
        assertThrows(
            ArithmeticException.class,
            () ->
                table.forEach(
                    row -> {
                      throw own;
                    }));
    assertSame(own, thrown);
    assertTrue(closed.get());
    assertFalse(toItsEnd.get());
  }

  private static Optional<Problem> rows(int count, RowTaker taker) {
    for (int number = 1; number <= count; number++) {
      taker.take(new Row(number, List.of(Cell.text(1, "x")), false, false));
    }
    return Optional.empty();
  }

  private static Table table(RowSource source) {
    return ReadAhead.of(new Table("f", "", Set.of(), List.of(), source));
  }
}
