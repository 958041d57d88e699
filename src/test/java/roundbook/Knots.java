package roundbook;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import roundbook.PackageGraph.Use;

/**
 * Finds the classes of a package of which each needs every other, by however long a way.
 *
 * <p>They are strongly connected components, found by Tarjan's algorithm (SIAM Journal on Computing
 * 1, 1972). A class stands for all that are nested in it.
 */
final class Knots {
  private final Map<String, Set<String>> uses;
  private final Map<String, Integer> number = new HashMap<>();
  private final Map<String, Integer> lowest = new HashMap<>();
  private final Deque<String> open = new ArrayDeque<>();
  private final List<Set<String>> found = new ArrayList<>();

  private Knots(Map<String, Set<String>> uses) {
    this.uses = uses;
  }

  /** Returns a line for each knot of more classes than so many, in the classes below a folder. */
  static List<String> larger(Path folder, int most) {
    Map<String, Set<String>> uses = new TreeMap<>();
    for (Use use : PackageGraph.uses(folder)) {
      String user = outermost(use.user());
      String used = outermost(use.used());
      if (packageOf(user).equals(packageOf(used))) {
        uses.computeIfAbsent(user, each -> new TreeSet<>()).add(used);
      }
    }
    Knots knots = new Knots(uses);
    uses.keySet().stream().filter(each -> !knots.number.containsKey(each)).forEach(knots::visit);
    return knots.found.stream().filter(each -> each.size() > most).map(Knots::line).toList();
  }

  private void visit(String name) {
    int own = number.size();
    number.put(name, own);
    lowest.put(name, own);
    open.push(name);
    for (String next : uses.getOrDefault(name, Set.of())) {
      if (!number.containsKey(next)) {
        visit(next);
        lowest.merge(name, lowest.get(next), Math::min);
      } else if (open.contains(next)) {
        lowest.merge(name, number.get(next), Math::min);
      }
    }
    if (lowest.get(name) == own) {
      Set<String> knot = new TreeSet<>();
      while (!knot.contains(name)) {
        knot.add(open.pop());
      }
      found.add(knot);
    }
  }

  private static String line(Set<String> knot) {
    String names =
        knot.stream()
            .map(each -> each.substring(each.lastIndexOf('.') + 1))
            .collect(Collectors.joining(" "));
    return packageOf(knot.iterator().next()) + ": " + names;
  }

  private static String outermost(String name) {
    int inner = name.indexOf('$');
    return inner < 0 ? name : name.substring(0, inner);
  }

  private static String packageOf(String name) {
    return name.substring(0, Math.max(0, name.lastIndexOf('.')));
  }
}
