package roundbook.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import roundbook.intake.Asked;

/** Finds the words of a user's own language in the file {@value #NAME} beside a job. */
final class OwnWords {
  /** The file's name. */
  static final String NAME = "roundbook-words.txt";

  private static final int MOST_BYTES = 1_000_000;

  private OwnWords() {}

  /** Returns what is asked with the words that lie beside a file; a file too large has none. */
  static Asked beside(Path file, Asked asked) throws IOException {
    Path words = file.toAbsolutePath().resolveSibling(NAME);
    boolean usable = Files.isRegularFile(words) && Files.size(words) <= MOST_BYTES;
    List<String> lines =
        usable ? new String(Files.readAllBytes(words), UTF_8).lines().toList() : List.of();
    return lines.isEmpty() ? asked : asked.with(lines);
  }
}
