package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.Piece;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.rounds.Fit;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.LogCut.Side;
import roundbook.takeoff.OpeningCut;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** Says what is doubtful about the openings. */
final class OpeningDoubts {
  private final LengthFormat formats;
  private final List<Problem> problems = new ArrayList<>();

  OpeningDoubts(LengthFormat formats) {
    this.formats = formats;
  }

  /**
   * Returns the doubts.
   *
   * @param asked all openings
   * @param cuts those that lie inside their walls
   */
  List<Problem> of(List<Opening> asked, List<OpeningCut> cuts) {
    Set<Opening> inside = cuts.stream().map(OpeningCut::opening).collect(Collectors.toSet());
    asked.stream().filter(opening -> !inside.contains(opening)).forEach(this::outside);
    cuts.forEach(this::look);
    return problems;
  }

  /**
   * Returns a doubt for each log that the tally keeps for a header and that lies elsewhere.
   *
   * @param pieces every placed log
   */
  List<Problem> kept(List<PiecePlan> pieces) {
    return pieces.stream()
        .filter(piece -> !piece.notes().contains(PiecePlan.Note.HEADER))
        .flatMap(piece -> piece.logs().stream())
        .map(placed -> placed.piece().log())
        .filter(log -> log.traits().keep() == Log.Keep.HEADER)
        .map(
            log ->
                Problem.of(
                        ProblemCode.HEADER_ELSEWHERE,
                        log.origin(),
                        "",
                        "log " + log.tag() + " is kept for a header but lies elsewhere")
                    .about(log.tag()))
        .toList();
  }

  /**
   * Returns a doubt for each log beside an opening that is long for it: for a whole wall, or for
   * two such pieces.
   *
   * @param pieces placed logs
   * @param fit what logs serve
   */
  List<Problem> longLogs(List<PiecePlan> pieces, Fit fit) {
    return pieces.stream()
        .flatMap(piece -> piece.halves().stream())
        .filter(half -> isLong(half.placed().piece(), fit))
        .map(this::longLog)
        .toList();
  }

  private static boolean isLong(Piece piece, Fit fit) {
    return fit.isWallLog(piece.log()) || piece.log().length().isMoreThan(piece.trimmed().times(2));
  }

  private Problem longLog(PiecePlan.Half half) {
    Piece piece = half.placed().piece();
    String message =
        String.format(
            Locale.ROOT,
            "opening %s, wall %s: log %s of %s is cut to %s beside it in round %d, for no shorter"
                + " one does as well",
            half.opening(),
            half.placed().wall().name(),
            piece.log().tag(),
            formats.feetInches(piece.log().length()),
            formats.feetInches(piece.trimmed()),
            half.placed().round());
    return Problem.of(ProblemCode.LONG_LOG_CUT, piece.log().origin(), "", message)
        .about(piece.log().tag());
  }

  private void outside(Opening opening) {
    String what = "does not lie between the corners of its wall; it is left out";
    say(opening, ProblemCode.OPENING_OUTSIDE, formats.mark(opening.left()), what);
  }

  private void look(OpeningCut cut) {
    cut.of(LogCut.Kind.THROUGH).forEach(log -> sides(cut, log));
    sill(cut);
    header(cut);
  }

  private void sides(OpeningCut opening, LogCut cut) {
    side(opening, cut, cut.sides().orElseThrow().left(), "left");
    side(opening, cut, cut.sides().orElseThrow().right(), "right");
  }

  private void side(OpeningCut opening, LogCut cut, Side side, String which) {
    if (side.tooShort()) {
      String message =
          String.format(
              Locale.ROOT,
              "leaves a %s piece of %s in round %d, less than %s",
              which,
              formats.feetInches(side.length()),
              cut.log().round(),
              formats.feetInches(side.least()));
      say(opening, ProblemCode.OPENING_PIECE_SHORT, formats.mark(side.length()), message);
    }
  }

  private void sill(OpeningCut cut) {
    cut.of(LogCut.Kind.THROUGH).stream()
        .filter(log -> log.log().round() == 1)
        .findFirst()
        .ifPresent(
            log -> {
              String message = "cuts the first log, " + log.log().tags() + ", in two";
              say(cut, ProblemCode.OPENING_SILL, formats.mark(cut.opening().sill()), message);
            });
  }

  /**
   * A log that loses a third of its height carries less, one that loses half is no header where
   * another lies above it (common practice; an engineer decides).
   */
  private void header(OpeningCut cut) {
    String found = formats.mark(cut.opening().head());
    if (cut.header().isEmpty()) {
      say(cut, ProblemCode.OPENING_HEADER, found, "has no whole log over its head");
      return;
    }
    Optional<LogCut> deep =
        cut.of(LogCut.Kind.FROM_BELOW).stream().filter(log -> log.losesMoreThan(3)).findFirst();
    deep.ifPresent(
        log -> {
          boolean header = cut.header().filter(log.log()::equals).isPresent();
          Length shown = header ? log.depth() : log.log().mid().minus(log.depth());
          String message =
              String.format(
                  Locale.ROOT,
                  header
                      ? "takes %s %s of the height of its header, log %s"
                      : "leaves %s %s of the height of log %s over it; its header is the next",
                  formats.mark(shown),
                  formats.unit().symbol(),
                  log.log().tags());
          say(cut, ProblemCode.OPENING_HEADER, found, message);
        });
  }

  private void say(OpeningCut cut, ProblemCode code, String found, String what) {
    say(cut.opening(), code, found, what);
  }

  private void say(Opening opening, ProblemCode code, String found, String what) {
    String message = "opening " + opening.name() + ", wall " + opening.wall() + ": " + what;
    problems.add(Problem.of(code, opening.origin(), found, message));
  }
}
