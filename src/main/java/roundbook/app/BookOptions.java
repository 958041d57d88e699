package roundbook.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What commands take that write a crew workbook: where it goes and how it looks. */
final class BookOptions {
  @Option(
      names = {"-o", "--out"},
      paramLabel = "FILE|DIR",
      description = "The crew workbook (.xlsx) or its folder; beside the input if not given.")
  private Path out;

  @Option(names = "--template", paramLabel = "FILE", description = "Style template of the sheets.")
  private Path template;

  @Option(names = "--no-pictures", description = "Leave the drawings out.")
  private boolean noPictures;

  @Option(names = "--force", description = "Replace an existing output; never an input.")
  private boolean force;

  /** Returns the workbook that is to be written, where one is named. */
  Optional<Path> file() {
    return Optional.ofNullable(out).filter(path -> !isFolder(path));
  }

  /**
   * Returns the folder that workbooks go to, which may have to be made; empty: beside the input.
   */
  Optional<Path> folder() {
    return Optional.ofNullable(out).filter(BookOptions::isFolder);
  }

  /** What is not there yet is a folder too, unless it is named like a workbook. */
  private static boolean isFolder(Path path) {
    boolean book = path.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
    return Files.isDirectory(path) || !book && !Files.exists(path);
  }

  Optional<Path> template() {
    return Optional.ofNullable(template);
  }

  boolean pictures() {
    return !noPictures;
  }

  boolean force() {
    return force;
  }
}
