package roundbook.report.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.plan.Plan;
import roundbook.plan.Plan.Use;
import roundbook.rounds.Fit;
import roundbook.units.Length;

/**
 * Spares for what lies over the last round: plates, and part logs that close a level top.
 *
 * <p>That plates want the straightest and longest logs is common practice; a part log wants the
 * size of the last round, for which its flat is reckoned.
 */
final class TopLogs {
  private final Plan plan;
  private final Fit fit;
  private final List<Log> spares;

  private TopLogs(Plan plan) {
    this.plan = plan;
    this.fit = new Fit(plan.job());
    this.spares =
        new ArrayList<>(
            plan.uses().stream()
                .filter(use -> use.use() == Use.SPARE)
                .filter(use -> !plan.takeoff().starter().tags().contains(use.log().tag()))
                .map(Plan.LogUse::log)
                .toList());
  }

  /**
   * A spare and how it is cut.
   *
   * @param wall the wall it would lie on
   * @param plate whether it is a plate, not a part log
   * @param piece the log and its cut; empty when no spare is left that serves
   */
  record Candidate(Wall wall, boolean plate, Optional<Piece> piece) {}

  /** Returns one for each wall, part logs first, no spare twice. */
  static List<Candidate> of(Plan plan) {
    TopLogs logs = new TopLogs(plan);
    List<Candidate> found = new ArrayList<>();
    for (boolean plate : new boolean[] {true, false}) {
      for (Wall wall : plan.job().building().walls()) {
        if (wall.laidFirst() != plate) {
          found.add(new Candidate(wall, plate, logs.take(wall, plate)));
        }
      }
    }
    return List.copyOf(found);
  }

  private Optional<Piece> take(Wall wall, boolean plate) {
    Optional<Piece> best =
        spares.stream()
            .flatMap(log -> fit.pieces(log, wall).stream())
            .min(plate ? plates() : partLogs());
    best.ifPresent(piece -> spares.remove(piece.log()));
    return best;
  }

  private Comparator<Piece> plates() {
    return Comparator.comparing((Piece piece) -> piece.log().traits().keep() != Log.Keep.PLATE)
        .thenComparing(piece -> piece.log().traits().sweep())
        .thenComparing(piece -> piece.log().length(), Comparator.reverseOrder())
        .thenComparing(this::offSize)
        .thenComparing(piece -> piece.log().tag());
  }

  private Comparator<Piece> partLogs() {
    return Comparator.comparing(this::offSize).thenComparing(piece -> piece.log().tag());
  }

  /** Returns by how much a piece's middle differs from the size of the last round. */
  private Length offSize(Piece piece) {
    return piece
        .mid()
        .minus(plan.stack().courses().get(plan.rounds() - 1).notch().size())
        .absolute();
  }
}
