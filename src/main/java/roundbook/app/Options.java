package roundbook.app;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import roundbook.intake.Asked;

/**
 * What a command asks; a group of options that it does not take asks nothing.
 *
 * @param files the files, folders and patterns named
 * @param run how files are run
 * @param setting settings and further tallies
 * @param job what a job has that is not read from a crew workbook
 * @param book where the crew workbook goes and how it looks
 * @param resume whether files are passed over whose workbook was made from the same
 * @param proof how long to reckon how near the best a choice is, where that is asked
 */
record Options(
    List<Path> files,
    RunOptions run,
    SettingOptions setting,
    JobOptions job,
    BookOptions book,
    boolean resume,
    Optional<Duration> proof) {
  /** What a command asks that makes nothing anew and proves nothing. */
  Options(
      List<Path> files, RunOptions run, SettingOptions setting, JobOptions job, BookOptions book) {
    this(files, run, setting, job, book, false, Optional.empty());
  }

  /** Returns what the reading is asked. */
  Asked asked() {
    return setting.asked(job);
  }

  /** Returns the further tallies, those of a yard after those of the job. */
  List<Path> tallies() {
    return java.util.stream.Stream.concat(setting.logs().stream(), job.yard().stream()).toList();
  }
}
