package roundbook.app;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import roundbook.balance.Effort;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.report.start.NearWords;
import roundbook.report.words.Words;

/** How near the best the plan of one file is, reckoned for a while where that is asked. */
record Proving(Path file, Run run, Console console) {
  /** Says that it begins, and returns what it may take; empty where it is not asked. */
  Optional<Effort> effort(Plan plan) {
    boolean always = plan.job().rules().text(Setting.PROVE).equals("yes");
    Optional<Duration> time =
        run.options().proof().or(() -> always ? Optional.of(ProofOption.USUAL) : Optional.empty());
    return time.filter(asked -> plan.rounds() > 0).map(this::effort);
  }

  private Effort effort(Duration time) {
    long from = System.nanoTime();
    console.say("%s: reckoning how near the best it is".formatted(file.getFileName()));
    BooleanSupplier stop = () -> run.stop().asked() || System.nanoTime() - from > time.toNanos();
    Effort effort = Effort.usual(0).until(stop);
    return run.files().isBatch() ? effort : effort.onAnyThreads();
  }

  /**
   * Says what was found, if it was asked.
   *
   * @param again whether it is the plan of a re-plan
   */
  void say(Plan plan, boolean again) {
    new NearWords(Words.of("en"), again)
        .told(plan)
        .map(told -> told.substring(0, 1).toLowerCase(Locale.ROOT) + told.substring(1))
        .ifPresent(told -> console.say(file.getFileName() + ": " + told));
  }
}
