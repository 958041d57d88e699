package roundbook.app;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;

/**
 * The files of a run on their way together: each takes a step, side by side or in turn, before any
 * takes the next.
 *
 * <p>A lone file is run on the thread that asks for it.
 */
final class FileRuns implements AutoCloseable {
  private final List<FileRun> files;
  private final Executor executor;
  private final Runnable end;

  FileRuns(List<FileRun> files, int atOnce) {
    this.files = List.copyOf(files);
    if (files.size() == 1) {
      executor = Runnable::run;
      end = () -> {};
    } else {
      ExecutorService pool = Executors.newFixedThreadPool(atOnce);
      executor = pool;
      end = pool::shutdownNow;
    }
  }

  /** One step of a file's work. */
  interface Work<A, B> {
    /** Returns the step of a file, given what the step before handed on. */
    Stage.Step<A, B> of(FileRun file);
  }

  /** Returns the files as they begin. */
  List<Stage<FileRun>> begun() {
    return files.stream().map(Stage::goingOn).toList();
  }

  /** Does a step of all files, side by side. */
  <A, B> List<Stage<B>> sideBySide(List<Stage<A>> from, Work<A, B> work) {
    return begin(from, work).stream().map(FileRuns::get).toList();
  }

  /** Does a step of all files, one after the other in their order. */
  <A, B> List<Stage<B>> inTurn(List<Stage<A>> from, Work<A, B> work) {
    List<Stage<B>> to = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      to.add(get(begin(files.get(i), from.get(i), work)));
    }
    return to;
  }

  /** Does the last step side by side; what each file said is printed in their order. */
  <A> List<Outcome> last(List<Stage<A>> from, Work<A, Outcome> work, Console console) {
    List<FutureTask<Stage<Outcome>>> begun = begin(from, work);
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      outcomes.add(get(begun.get(i)).outcome());
      files.get(i).say(console);
    }
    return outcomes;
  }

  private <A, B> List<FutureTask<Stage<B>>> begin(List<Stage<A>> from, Work<A, B> work) {
    List<FutureTask<Stage<B>>> begun = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      begun.add(begin(files.get(i), from.get(i), work));
    }
    return begun;
  }

  private <A, B> FutureTask<Stage<B>> begin(FileRun file, Stage<A> from, Work<A, B> work) {
    FutureTask<Stage<B>> task = new FutureTask<>(() -> file.step(from, work.of(file)));
    executor.execute(task);
    return task;
  }

  private static <B> B get(FutureTask<B> task) {
    try {
      return task.get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the batch was interrupted", stopped);
    } catch (ExecutionException fault) {
      throw new IllegalStateException(fault.getCause());
    }
  }

  @Override
  public void close() {
    end.run();
  }
}
