package roundbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Keeps apart what comes of files of one name from different folders.
 *
 * <p>Written into one folder they would become revisions of each other. So each goes into a folder
 * below it, named as the file's own folder is seen from the deepest one that they all share.
 */
final class Namesakes {
  private Namesakes() {}

  /** Returns the folder below the one asked for of each file that has a namesake. */
  static Map<Path, Path> folders(List<Path> files) {
    Map<String, List<Path>> named = new TreeMap<>();
    for (Path file : files) {
      String stem = Revision.stem(file).toLowerCase(Locale.ROOT);
      named.computeIfAbsent(stem, each -> new ArrayList<>()).add(file);
    }
    Map<Path, Path> folders = new HashMap<>();
    for (List<Path> alike : named.values()) {
      Path shared = alike.stream().map(Namesakes::folder).reduce(Namesakes::shared).orElseThrow();
      alike.forEach(file -> folders.put(file, below(shared, folder(file))));
    }
    return folders;
  }

  private static Path folder(Path file) {
    return file.toAbsolutePath().normalize().getParent();
  }

  /** Returns a folder as seen from another; on another drive that begins with the drive's name. */
  private static Path below(Path shared, Path folder) {
    Path root = folder.getRoot();
    return folder.startsWith(shared)
        ? shared.relativize(folder)
        : Path.of(root.toString().replaceAll("\\W", ""))
            .resolve(root.relativize(folder).toString());
  }

  /** Returns the deepest folder that holds both, or the first one's root where none does. */
  private static Path shared(Path one, Path other) {
    Path shared = one;
    while (!other.startsWith(shared) && shared.getParent() != null) {
      shared = shared.getParent();
    }
    return shared;
  }
}
