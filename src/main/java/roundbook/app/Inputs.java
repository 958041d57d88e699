package roundbook.app;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Expands the files, folders and patterns of a command line, in a fixed order. */
final class Inputs {
  private static final Set<String> ENDINGS =
      Set.of("xlsx", "xlsm", "xls", "csv", "tsv", "txt", "hpr", "ods");

  private Inputs() {}

  /**
   * Returns the files to run: a file as it is named, a folder's tallies and job workbooks, a
   * pattern's matches. Own workbooks and lock files are passed over, each file is taken once.
   */
  static List<Path> expand(List<Path> named, boolean recursive) throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path path : named) {
      if (Files.isDirectory(path)) {
        files.addAll(folder(path, recursive));
      } else if (Files.notExists(path) && path.getFileName().toString().matches(".*[*?\\[{].*")) {
        files.addAll(matches(path));
      } else {
        files.add(path);
      }
    }
    Set<Path> seen = new HashSet<>();
    return files.stream().filter(file -> seen.add(file.toAbsolutePath().normalize())).toList();
  }

  private static List<Path> folder(Path folder, boolean recursive) throws IOException {
    try (Stream<Path> files = Files.walk(folder, recursive ? Integer.MAX_VALUE : 1)) {
      return files.filter(Files::isRegularFile).filter(Inputs::isInput).sorted().toList();
    }
  }

  private static List<Path> matches(Path pattern) throws IOException {
    Path folder = pattern.toAbsolutePath().getParent();
    List<Path> files = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      return List.of(pattern);
    }
    String glob = pattern.getFileName().toString();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, glob)) {
      for (Path file : found) {
        if (Files.isRegularFile(file) && !Revision.skipped(file)) {
          files.add(file);
        }
      }
    }
    files.sort(null);
    return files.isEmpty() ? List.of(pattern) : files;
  }

  private static boolean isInput(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    String ending = name.substring(name.lastIndexOf('.') + 1);
    return ENDINGS.contains(ending) && !Revision.skipped(file) && !name.startsWith(".");
  }
}
