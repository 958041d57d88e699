package roundbook.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is told of many problems, in the order in which a builder must know of them.
 *
 * <p>What costs most comes first: what makes every log wrong (units, bark, doubtful figures), then
 * pins and openings, then what is not told of here, then what was not measured, then gaps, ends and
 * steps. Which warnings are only counted, and the order, are judgement.
 *
 * @param stops the errors, the most costly kinds first
 * @param first what must be done before the first cut, at most eight lines
 * @param counted the other kinds, a line each
 */
public record Briefing(List<Problem> stops, List<Line> first, List<Line> counted) {
  /** How many lines a person reads before the first cut. */
  public static final int LINES_MOST = 8;

  /** So many of a kind are told one by one. */
  private static final int FEW = 3;

  private static final List<ProblemCode> FOREMOST =
      List.of(
          ProblemCode.TOO_FEW_LOGS,
          ProblemCode.UNIT_ASSUMED,
          ProblemCode.MAYBE_FEET_DOT_INCHES,
          ProblemCode.BARK_UNCERTAIN,
          ProblemCode.HEADING_DOUBTFUL,
          ProblemCode.DOUBTFUL_VALUE,
          ProblemCode.BUTT_TIP_SWAPPED,
          ProblemCode.OTHER_INPUT,
          ProblemCode.SEARCH_STOPPED,
          ProblemCode.BAD_PIN,
          ProblemCode.BAD_OPENING,
          ProblemCode.OPENING_OUTSIDE,
          ProblemCode.OPENING_SILL,
          ProblemCode.OPENING_HEADER,
          ProblemCode.OPENING_LEAF,
          ProblemCode.OPENING_PIECE_SHORT,
          ProblemCode.HEADER_ELSEWHERE,
          ProblemCode.PLATE_ELSEWHERE,
          ProblemCode.LONG_LOG_CUT,
          ProblemCode.WALL_HIGH,
          ProblemCode.NECK_THIN);

  private static final List<ProblemCode> HINDMOST =
      List.of(
          ProblemCode.NOT_MEASURED,
          ProblemCode.MID_ESTIMATED,
          ProblemCode.END_ESTIMATED,
          ProblemCode.GAP_SMALL,
          ProblemCode.TIP_THIN,
          ProblemCode.GAP_LARGE,
          ProblemCode.GAP_SWEEP,
          ProblemCode.SPREAD_LARGE,
          ProblemCode.STEP_LARGE);

  /** Warnings after which nothing must be done before logs are cut. */
  private static final Set<ProblemCode> COUNTED =
      EnumSet.of(
          ProblemCode.TOO_SHORT,
          ProblemCode.TOO_THIN,
          ProblemCode.MISSING_ID,
          ProblemCode.GIRTH_CONVERTED,
          ProblemCode.EXTRA_CELL,
          ProblemCode.ENCODING_GUESSED,
          ProblemCode.WRONG_EXTENSION,
          ProblemCode.NO_JOB_SHEET,
          ProblemCode.STYLE_MISSING,
          ProblemCode.TEXT_CUT);

  /**
   * A problem that is told, and how many more of its kind are not.
   *
   * @param problem the problem
   * @param more the others of its kind for which it stands
   */
  public record Line(Problem problem, int more) {}

  /** Copies the lists. */
  public Briefing {
    stops = List.copyOf(stops);
    first = List.copyOf(first);
    counted = List.copyOf(counted);
  }

  /** Returns what is told of problems, within a kind in their order. */
  public static Briefing of(List<Problem> problems) {
    List<Problem> stops = new ArrayList<>();
    List<Line> first = new ArrayList<>();
    List<Line> counted = new ArrayList<>();
    for (List<Problem> kind : kinds(problems)) {
      Problem one = kind.get(0);
      boolean few = kind.size() <= FEW;
      boolean fits = first.size() + (few ? kind.size() : 1) <= LINES_MOST;
      if (one.severity() == Severity.ERROR) {
        stops.addAll(kind);
      } else if (one.severity() == Severity.INFO || COUNTED.contains(one.code()) || !fits) {
        counted.add(line(kind));
      } else if (few) {
        kind.forEach(each -> first.add(new Line(each, 0)));
      } else {
        first.add(line(kind));
      }
    }
    return new Briefing(stops, first, counted);
  }

  /** Returns the errors, a line a kind. */
  public List<Line> stopKinds() {
    return kinds(stops).stream().map(Briefing::line).toList();
  }

  private static Line line(List<Problem> kind) {
    return new Line(kind.get(0), kind.size() - 1);
  }

  /** Returns problems by code and severity, the most costly kinds first. */
  private static List<List<Problem>> kinds(List<Problem> problems) {
    Map<String, List<Problem>> kinds = new LinkedHashMap<>();
    problems.forEach(
        each ->
            kinds
                .computeIfAbsent(each.severity().word() + each.code(), key -> new ArrayList<>())
                .add(each));
    return kinds.values().stream()
        .sorted(Comparator.comparingInt(kind -> rank(kind.get(0).code())))
        .toList();
  }

  private static int rank(ProblemCode code) {
    int early = FOREMOST.indexOf(code);
    int late = HINDMOST.indexOf(code);
    return early >= 0 ? early : FOREMOST.size() + late + 1;
  }
}
