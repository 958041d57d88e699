package roundbook.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.plan.PiecePlan.Note;
import roundbook.problem.Value;
import roundbook.takeoff.Chinking;
import roundbook.takeoff.OpeningCut;
import roundbook.takeoff.PieceWood;
import roundbook.takeoff.Starter;
import roundbook.takeoff.Takeoff;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.wood.LogRule;

/** Adds up everything to buy and everything built in. */
final class Quantities {
  private static final String WOOD = "logs";
  private static final String CHINKING = "chinking";
  private static final String OPENINGS = "openings";
  private static final String FIXING = "fixing";
  private static final String SCALE = "scale";

  private final Job job;
  private final List<PiecePlan> pieces;
  private final Takeoff takeoff;
  private final QuantityLines lines;

  private Quantities(Job job, List<PiecePlan> pieces, Takeoff takeoff) {
    this.job = job;
    this.pieces = pieces;
    this.takeoff = takeoff;
    this.lines = new QuantityLines(job.rules().metric());
  }

  static List<Quantity> of(Job job, List<PiecePlan> pieces, Takeoff takeoff) {
    Quantities quantities = new Quantities(job, pieces, takeoff);
    if (!pieces.isEmpty()) {
      quantities.wood();
      quantities.chinking();
      quantities.openings();
      quantities.fixing();
      new Offcuts(quantities.lines).add(quantities.unplaced(), quantities.standing(), takeoff);
      quantities.scale();
    }
    return List.copyOf(quantities.lines.lines());
  }

  private void wood() {
    lines.count(WOOD, "logs_placed", standing().size());
    lines.length(WOOD, "trimmed_length", trimmed());
    lines.volume(WOOD, "round_volume", sum(PieceWood::round));
    lines.volume(WOOD, "slabs", sum(PieceWood::slabs));
    lines.volume(WOOD, "sawn_volume", sum(PieceWood::sawn));
    lines.volume(WOOD, "cut_away", sum(PieceWood::cutAway));
    lines.volume(WOOD, "finished_volume", sum(PieceWood::finished));
    lines.weight(WOOD, "green_weight", sum(each -> each.weights().green()));
    lines.weight(WOOD, "service_weight", sum(each -> each.weights().service()), moisture());
  }

  private Length trimmed() {
    return sum(standing().stream().map(Piece::trimmed).toList());
  }

  /** Returns the pieces of all logs that stand. */
  private List<Piece> standing() {
    return takeoff.wood().stream().map(wood -> wood.log().piece()).toList();
  }

  private double sum(ToDoubleFunction<PieceWood> part) {
    return takeoff.wood().stream().mapToDouble(part).sum();
  }

  private Value moisture() {
    double percent = takeoff.settling().moisture().service();
    return plain(BigDecimal.valueOf(percent).setScale(1, RoundingMode.HALF_UP));
  }

  private static Value plain(BigDecimal number) {
    return Value.number(new BigDecimal(number.stripTrailingZeros().toPlainString()));
  }

  private void chinking() {
    Chinking all = takeoff.chinking();
    lines.run(CHINKING, "joint_run", all.run());
    lines.area(CHINKING, "face_area", 2 * all.faceArea());
    lines.volume(CHINKING, "gap_volume", all.gapVolume());
    lines.volume(CHINKING, "chinking_volume", all.stripVolume(), depth());
    lines.volume(CHINKING, "chinking_to_buy", all.toBuy(), waste());
    lines.pails(CHINKING, "chinking_in_pails", all.toBuy(), waste());
    lines.volume(CHINKING, "cavity", all.cavity());
    all.backer().forEach(this::backer);
  }

  private void backer(double size, double inches) {
    if (Double.isInfinite(size)) {
      lines.run(CHINKING, "backer_none", inches);
    } else {
      lines.run(CHINKING, "backer", inches, measure(length(size)));
    }
  }

  private Length length(double size) {
    return job.rules().metric()
        ? Length.ofMillimetres(Math.round(size))
        : Length.ofInchFraction(Math.round(size * 8), 8);
  }

  private Value depth() {
    return measure(job.rules().length(Setting.CHINKING_DEPTH));
  }

  private Value measure(Length length) {
    return Value.measure(length, LengthFormat.forJob(job.rules().unit(), job.rules().printStep()));
  }

  private Value waste() {
    return plain(job.rules().number(Setting.WASTE_PERCENT));
  }

  private void openings() {
    if (takeoff.openings().isEmpty()) {
      return;
    }
    lines.count(OPENINGS, "openings", takeoff.openings().size());
    List<OpeningCut.Frame> frames = takeoff.openings().stream().map(OpeningCut::frame).toList();
    lines.length(
        OPENINGS, "buck_board", sum(frames.stream().map(OpeningCut.Frame::board).toList()), buck());
    lines.length(OPENINGS, "keys", sum(frames.stream().map(OpeningCut.Frame::keys).toList()));
    List<PiecePlan> pairs = pieces.stream().filter(each -> !each.halves().isEmpty()).toList();
    if (!pairs.isEmpty()) {
      lines.count(OPENINGS, "freed", pairs.size(), tags(pairs));
    }
  }

  private Value buck() {
    return measure(job.rules().length(Setting.BUCK_THICKNESS));
  }

  private static Value tags(List<PiecePlan> pairs) {
    return Value.text(
        pairs.stream().map(each -> each.placed().tags()).collect(Collectors.joining(", ")));
  }

  private static Length sum(List<Length> lengths) {
    return lengths.stream().reduce(Length.ZERO, Length::plus);
  }

  private void fixing() {
    Set<Note> loose = Set.of(Note.ANCHOR_SLIDING, Note.ANCHOR_PUSHED);
    List<String> anchored =
        pieces.stream()
            .filter(
                piece ->
                    job.isHeldByPegs(piece.placed().wall())
                        || piece.notes().stream().anyMatch(loose::contains))
            .map(piece -> piece.placed().tags())
            .toList();
    lines.count(FIXING, "anchors", anchored.size(), Value.text(String.join(", ", anchored)));
    Starter starter = takeoff.starter();
    if (!starter.halves().isEmpty()) {
      String tag = starter.log().map(Log::tag).orElse("–");
      lines.count(FIXING, "starters", starter.halves().size(), Value.text(tag));
    }
  }

  private Set<String> placed() {
    return standing().stream().map(piece -> piece.log().tag()).collect(Collectors.toSet());
  }

  private List<Log> unplaced() {
    Set<String> placed = placed();
    return job.logs().stream().filter(log -> !placed.contains(log.tag())).toList();
  }

  /** Lists every rule, for the tally and for the logs that have a place. */
  private void scale() {
    Set<String> placed = placed();
    for (LogRule rule : LogRule.values()) {
      double all = takeoff.scale().total(rule);
      lines.scale(SCALE, "scale", rule, all, takeoff.scale().total(rule, placed));
    }
  }
}
