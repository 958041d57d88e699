package roundbook.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.page.Sheet;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.report.book.CrewBook;
import roundbook.report.frame.CrewContext;
import roundbook.rounds.BalancedChooser;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;

/**
 * Gets ready to plan and write a workbook while the logs are chosen, on a second thread.
 *
 * <p>The first workbook of a run costs more in loading, linking and compiling what makes it than in
 * making it. So two rounds of the job are planned and written to nowhere meanwhile, from some of
 * its logs, without drawings and without looking for a good choice. No workbook is read or written
 * by the run until that has ended, so the library is never used from two threads, and nothing of it
 * is kept: the run gives the same with and without. When the logs are chosen it stops where it is.
 */
final class WarmUp {
  private static final int ROUNDS = 2;
  private static final int LOGS_MOST = 60;

  private final Job job;
  private final Thread thread = new Thread(this::rehearse, "warm-up");
  private volatile boolean enough;

  private WarmUp(Job job) {
    this.job = job;
  }

  /**
   * Begins to get ready.
   *
   * @param job what is planned meanwhile
   */
  static WarmUp begun(Job job) {
    WarmUp begun = new WarmUp(job);
    begun.thread.setDaemon(true);
    // What fails here fails again, and is told, where the workbook itself is made.
    begun.thread.setUncaughtExceptionHandler((thread, fault) -> {});
    begun.thread.start();
    return begun;
  }

  private void rehearse() {
    BuildRules rules =
        job.rules().with(Setting.ROUNDS, BigDecimal.valueOf(ROUNDS), BuildRules.Origin.DEFAULT);
    Job small =
        job.with(rules)
            .withBuilt(AsBuilt.NOTHING)
            .withLogs(job.logs().stream().limit(LOGS_MOST).toList());
    Effort least = Effort.usual(1).withMoves(1).until(() -> enough);
    Plan plan = Planner.of(small, new BalancedChooser().choose(small, least));
    CrewContext context = CrewContext.of(plan, List.of(), new CrewContext.Issue(1, "", "", false));
    List<Sheet> sheets = new ArrayList<>();
    for (Supplier<List<Sheet>> part : CrewBook.parts(context)) {
      goOn();
      sheets.addAll(part.get());
    }
    goOn();
    try {
      BookWriter.write(
          CrewBook.of(context, sheets), StyleTemplate.standard(), new Nowhere(this::goOn));
    } catch (IOException nowhere) {
      throw new UncheckedIOException(nowhere);
    }
  }

  private void goOn() {
    if (enough) {
      throw new CancellationException("the logs are chosen");
    }
  }

  /** Takes bytes and keeps none. */
  private static final class Nowhere extends OutputStream {
    private final Runnable asked;

    Nowhere(Runnable asked) {
      this.asked = asked;
    }

    @Override
    public void write(int one) {
      asked.run();
    }

    @Override
    public void write(byte[] bytes, int from, int count) {
      asked.run();
    }
  }

  /** Ends it and waits until it has ended. */
  void await() {
    enough = true;
    try {
      thread.join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
