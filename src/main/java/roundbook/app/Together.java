package roundbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Files that are run together, and what keeps apart what comes of those of one name.
 *
 * <p>Written into one folder they would become revisions of each other. So each goes into a folder
 * below it, named as the file's own folder is seen from the deepest one that they all share. Two in
 * one folder that differ in their ending alone keep it in their workbooks' names.
 *
 * @param files the files
 * @param folders the folder below the one asked for of each file that has a namesake
 * @param besides the files beside which another one of the same name but another ending is run
 */
record Together(List<Path> files, Map<Path, Path> folders, Set<Path> besides) {
  /** Returns files that are run together. */
  static Together of(List<Path> files) {
    Map<Path, Path> folders = new HashMap<>();
    for (List<Path> alike : alike(files, file -> "")) {
      Path shared = alike.stream().map(Together::folder).reduce(Together::shared).orElseThrow();
      alike.forEach(file -> folders.put(file, below(shared, folder(file))));
    }
    Set<Path> besides =
        alike(files, file -> folder(file).toString()).stream()
            .filter(alike -> alike.size() > 1)
            .flatMap(List::stream)
            .collect(Collectors.toSet());
    return new Together(List.copyOf(files), folders, besides);
  }

  /** Returns whether it is more than one file. */
  boolean isBatch() {
    return files.size() > 1;
  }

  /** Returns a folder, or the one below it for a file whose name another file of the run has. */
  Path apart(Path file, Path top) {
    return top.resolve(folders.getOrDefault(file, Path.of("")));
  }

  /** Returns whether a file of the same name but another ending is run from the same folder. */
  boolean hasNamesakeBeside(Path file) {
    return besides.contains(file);
  }

  /** Returns the files in groups of one name without its ending, and of one more trait. */
  private static Collection<List<Path>> alike(List<Path> files, Function<Path, String> trait) {
    Map<List<String>, List<Path>> named = new LinkedHashMap<>();
    for (Path file : files) {
      List<String> key = List.of(trait.apply(file), Revision.stem(file).toLowerCase(Locale.ROOT));
      named.computeIfAbsent(key, each -> new ArrayList<>()).add(file);
    }
    return named.values();
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
