package roundbook.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import roundbook.report.JobBook;
import roundbook.sheet.BookWriter;
import roundbook.sheet.StyleTemplate;
import roundbook.units.LengthUnit;

/**
 * Gets ready to write a workbook while the logs are chosen, on a second thread.
 *
 * <p>The first workbook of a run costs more in loading and starting what writes it than in writing.
 * So a small one, the example of a job workbook, is written to nowhere meanwhile. No workbook is
 * read or written by the run until that has ended, so the library is never used from two threads,
 * and nothing of it is kept: the run gives the same with and without.
 */
final class WarmUp {
  private final Thread thread = new Thread(WarmUp::write, "warm-up");

  private WarmUp() {}

  /** Begins to get ready. */
  static WarmUp begun() {
    WarmUp begun = new WarmUp();
    begun.thread.setDaemon(true);
    // What fails here fails again, and is told, where the workbook itself is written.
    begun.thread.setUncaughtExceptionHandler((thread, fault) -> {});
    begun.thread.start();
    return begun;
  }

  private static void write() {
    try {
      BookWriter.write(
          JobBook.example(LengthUnit.INCH),
          StyleTemplate.standard(),
          OutputStream.nullOutputStream());
    } catch (IOException nowhere) {
      throw new UncheckedIOException(nowhere);
    }
  }

  /** Waits until it is ready. */
  void await() {
    try {
      thread.join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
