package roundbook;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;

/** Holds compiled classes against the architecture by the JDK's own dependency lister. */
final class PackageGraph {
  private static final Pattern ARROW =
      Pattern.compile("^\\s+(\\S+)\\s+->\\s+(\\S+)(?:\\s.*)?$", Pattern.MULTILINE);

  private PackageGraph() {}

  /**
   * One class that uses another.
   *
   * @param user the full name of the class that uses
   * @param used the full name of the class that is used
   */
  record Use(String user, String used) {
    private boolean allowed() {
      return Room.of(packageOf(user)).filter(room -> room.mayUse(packageOf(used))).isPresent();
    }

    /** Returns the package of the class that uses. */
    String from() {
      return packageOf(user);
    }

    /** Returns the package of the class that is used. */
    String to() {
      return packageOf(used);
    }

    private static String packageOf(String className) {
      int dot = className.lastIndexOf('.');
      return dot < 0 ? "" : className.substring(0, dot);
    }

    @Override
    public String toString() {
      return user + " -> " + used;
    }
  }

  /** Returns a line for each use that no row allows, in the classes below a folder. */
  static List<String> breaches(Path folder) {
    return uses(folder).stream().filter(use -> !use.allowed()).map(Use::toString).toList();
  }

  /** Returns every use in the classes below a folder; some compilers make one of a description. */
  static List<Use> uses(Path folder) {
    StringWriter said = new StringWriter();
    PrintWriter to = new PrintWriter(said);
    int code =
        ToolProvider.findFirst("jdeps")
            .orElseThrow()
            .run(to, to, "-verbose:class", "-filter:none", folder.toString());
    if (code != 0) {
      throw new IllegalStateException("jdeps ended with " + code + ": " + said);
    }
    return ARROW
        .matcher(said.toString())
        .results()
        .map(PackageGraph::use)
        .filter(use -> !use.user().endsWith(".package-info"))
        .toList();
  }

  private static Use use(MatchResult arrow) {
    return new Use(arrow.group(1), arrow.group(2));
  }
}
