package roundbook.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import roundbook.intake.Asked;

/** Finds the words of a user's own language in the file {@value #NAME} beside a job. */
final class OwnWords {
  /** The file's name. */
  static final String NAME = "roundbook-words.txt";

  private static final int MOST_BYTES = 1_000_000;

  private OwnWords() {}

  /** Returns the file of own words beside a job; empty where there is none, or one too large. */
  static Optional<Path> file(Path job) throws IOException {
    Path words = job.toAbsolutePath().resolveSibling(NAME);
    boolean usable = Files.isRegularFile(words) && Files.size(words) <= MOST_BYTES;
    return usable ? Optional.of(words) : Optional.empty();
  }

  /** Returns what is asked with the words that lie beside a file. */
  static Asked beside(Path job, Asked asked) throws IOException {
    Optional<Path> words = file(job);
    List<String> lines =
        words.isPresent()
            ? new String(Files.readAllBytes(words.get()), UTF_8).lines().toList()
            : List.of();
    return lines.isEmpty() ? asked : asked.with(lines);
  }
}
