package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Leaf;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.Piece;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Value;
import roundbook.rounds.Fit;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.LogCut.RemainingPiece;
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
   * @param job the job with all openings
   * @param cuts those that lie inside their walls
   */
  List<Problem> of(Job job, List<OpeningCut> cuts) {
    Set<Opening> inside = cuts.stream().map(OpeningCut::opening).collect(Collectors.toSet());
    job.openings().stream()
        .filter(opening -> !inside.contains(opening))
        .forEach(opening -> outside(opening, job.building()));
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
                Problem.of(ProblemCode.HEADER_ELSEWHERE, log.origin())
                    .with("log", log.tag())
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
    return Problem.of(ProblemCode.LONG_LOG_CUT, piece.log().origin())
        .with("opening", half.opening())
        .with("wall", half.placed().wall().name())
        .with("log", piece.log().tag())
        .with("length", Value.tape(piece.log().length(), formats))
        .with("trimmed", Value.tape(piece.trimmed(), formats))
        .with("round", half.placed().round())
        .about(piece.log().tag());
  }

  private void outside(Opening opening, Building building) {
    Length left = opening.toldLeft(building);
    problems.add(problem(opening, ProblemCode.OPENING_OUTSIDE, "", left));
  }

  private void look(OpeningCut cut) {
    cut.of(CutExtent.THROUGH).forEach(log -> sides(cut, log));
    sill(cut);
    header(cut);
    leaf(cut);
  }

  private void sides(OpeningCut opening, LogCut cut) {
    side(opening, cut, cut.sides().orElseThrow().left(), "left");
    side(opening, cut, cut.sides().orElseThrow().right(), "right");
  }

  private void side(OpeningCut opening, LogCut cut, RemainingPiece side, String which) {
    if (side.tooShort()) {
      problems.add(
          problem(opening.opening(), ProblemCode.OPENING_PIECE_SHORT, which, side.length())
              .with("length", Value.tape(side.length(), formats))
              .with("round", cut.log().round())
              .with("least", Value.tape(side.least(), formats)));
    }
  }

  private void sill(OpeningCut cut) {
    cut.of(CutExtent.THROUGH).stream()
        .filter(log -> log.log().round() == 1)
        .findFirst()
        .ifPresent(
            log ->
                problems.add(
                    problem(cut.opening(), ProblemCode.OPENING_SILL, "", cut.opening().sill())
                        .with("log", log.log().tags())));
  }

  /** A leaf that does not go between the bucks, with the rough opening that would hold it. */
  private void leaf(OpeningCut cut) {
    cut.wanted()
        .ifPresent(
            wanted ->
                problems.add(
                    problem(cut.opening(), ProblemCode.OPENING_LEAF, "", cut.opening().width())
                        .with("leaf", sides(cut.opening().leaf().orElseThrow()))
                        .with("clear", sides(cut.frame().clear()))
                        .with("width", Value.mark(up(wanted.width()), formats))
                        .with("head", Value.mark(up(wanted.height()), formats))));
  }

  private String sides(Leaf leaf) {
    return formats.mark(leaf.width()) + " × " + formats.mark(leaf.height());
  }

  /** Returns a length rounded up to whole inches or centimetres, as openings are laid out. */
  private Length up(Length length) {
    Length step = formats.unit().coarseStep();
    Length near = length.roundedTo(step);
    return near.isLessThan(length) ? near.plus(step) : near;
  }

  /**
   * A log that loses a third of its height carries less, one that loses half is no header where
   * another lies above it (common practice; an engineer decides).
   */
  private void header(OpeningCut cut) {
    if (cut.header().isEmpty()) {
      problems.add(header(cut, "none"));
      return;
    }
    Optional<LogCut> deep =
        cut.of(CutExtent.FROM_BELOW).stream().filter(log -> log.losesMoreThan(3)).findFirst();
    deep.ifPresent(
        log -> {
          boolean header = cut.header().filter(log.log()::equals).isPresent();
          Length shown = header ? log.depth() : log.left();
          problems.add(
              header(cut, header ? "takes" : "leaves")
                  .with("height", Value.measure(shown, formats))
                  .with("log", log.log().tags()));
        });
  }

  private Problem header(OpeningCut cut, String variant) {
    return problem(cut.opening(), ProblemCode.OPENING_HEADER, variant, cut.opening().head());
  }

  private Problem problem(Opening opening, ProblemCode code, String variant, Length found) {
    return Problem.of(code, variant, opening.origin())
        .with("opening", opening.name())
        .with("wall", opening.wall())
        .found(Value.mark(found, formats));
  }
}
