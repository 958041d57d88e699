package roundbook.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A growing list of problems, at most one for each cell. */
public final class Problems {
  private static final Comparator<Problem> ORDER =
      Comparator.comparing((Problem problem) -> problem.where().row())
          .thenComparing(problem -> problem.where().column());

  private final List<Problem> all = new ArrayList<>();
  private final Map<CellRef, Integer> cells = new HashMap<>();

  /** Adds a problem unless its cell has one already; a graver one takes that one's place. */
  public void add(Problem problem) {
    CellRef where = problem.where();
    Integer at = where.column() == 0 ? null : cells.putIfAbsent(where, all.size());
    if (at == null) {
      all.add(problem);
    } else if (problem.severity().compareTo(all.get(at).severity()) < 0) {
      all.set(at, problem);
    }
  }

  /** Returns the problems in the order of sheets as they were read, then by row and column. */
  public List<Problem> sorted() {
    List<Problem> sorted = new ArrayList<>();
    List<String> sheets = all.stream().map(problem -> sheetOf(problem)).distinct().toList();
    for (String sheet : sheets) {
      all.stream()
          .filter(problem -> sheetOf(problem).equals(sheet))
          .sorted(ORDER)
          .forEach(sorted::add);
    }
    return List.copyOf(sorted);
  }

  private static String sheetOf(Problem problem) {
    return problem.where().file() + "\n" + problem.where().sheet();
  }
}
