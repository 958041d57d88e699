package roundbook.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import roundbook.problem.Problem;
import roundbook.table.Row;
import roundbook.table.RowSource;
import roundbook.table.RowTaker;
import roundbook.table.Table;

/**
 * Reads rows on a thread of its own while those before them are taken, a few blocks ahead.
 *
 * <p>Reading a long file and checking its rows take about as long as each other. The rows come to
 * the taker in their order and on the caller's thread, so nothing but the time is different.
 */
final class ReadAhead {
  private static final int ROWS_IN_A_BLOCK = 1024;
  private static final int BLOCKS = 4;

  private final RowSource source;
  private final BlockingQueue<Block> ready = new ArrayBlockingQueue<>(BLOCKS);
  private volatile boolean stopped;
  private List<Row> filling = new ArrayList<>(ROWS_IN_A_BLOCK);

  /**
   * Some rows, and at the end of the file how it ended.
   *
   * @param last whether no block follows
   * @param problem what kept the file from being read to its end; null when nothing did
   * @param thrown what the source threw; null when it threw nothing
   */
  private record Block(List<Row> rows, boolean last, Problem problem, Throwable thrown) {}

  /** Tells the source that its rows are no longer wanted. */
  private static final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private ReadAhead(RowSource source) {
    this.source = source;
  }

  /** Returns the table with the rows of its file, where it is a large one, read ahead. */
  static Table of(Table table) {
    return table.all() == null
        ? table
        : new Table(
            table.file(),
            table.sheet(),
            table.marks(),
            table.rows(),
            taker -> forEach(table.all(), taker));
  }

  private static Optional<Problem> forEach(RowSource source, RowTaker taker) {
    ReadAhead ahead = new ReadAhead(source);
    Thread reader = new Thread(ahead::read, "read ahead");
    reader.setDaemon(true);
    reader.start();
    try {
      return ahead.take(taker);
    } finally {
      ahead.stop(reader);
    }
  }

  private Optional<Problem> take(RowTaker taker) {
    while (true) {
      Block block = next();
      for (Row row : block.rows) {
        taker.take(row);
      }
      if (block.thrown instanceof Error error) {
        throw error;
      }
      if (block.thrown != null) {
        throw (RuntimeException) block.thrown;
      }
      if (block.last) {
        return Optional.ofNullable(block.problem);
      }
    }
  }

  private Block next() {
    try {
      return ready.take();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while a file was read", interrupted);
    }
  }

  /** Runs on the thread that reads. */
  private void read() {
    Problem problem = null;
    Throwable thrown = null;
    try {
      problem = source.forEach(this::add).orElse(null);
    } catch (RuntimeException | Error broken) {
      thrown = broken;
    }
    put(new Block(filling, true, problem, thrown));
  }

  private void add(Row row) {
    filling.add(row);
    if (filling.size() == ROWS_IN_A_BLOCK) {
      if (!put(new Block(filling, false, null, null))) {
        throw new Stopped();
      }
      filling = new ArrayList<>(ROWS_IN_A_BLOCK);
    }
  }

  /** Hands a block on; returns whether it is wanted. */
  private boolean put(Block block) {
    try {
      if (!stopped) {
        ready.put(block);
      }
    } catch (InterruptedException interrupted) {
      stopped = true;
    }
    return !stopped;
  }

  /** Waits until the file is closed; rows that nobody wants any more are dropped. */
  private void stop(Thread reader) {
    stopped = true;
    ready.clear();
    try {
      reader.join();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
