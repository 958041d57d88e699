package roundbook.stack;

import java.util.List;
import roundbook.job.Building;
import roundbook.job.Pair;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.units.Length;

/**
 * A piece of a log in its place in a wall.
 *
 * @param piece the piece
 * @param wall its wall
 * @param round its round, counted from 1
 * @param buttAtStart whether its butt lies at the wall's start corner: right seen from outside
 */
public record PlacedLog(Piece piece, Wall wall, int round, boolean buttAtStart) {
  /** Returns the logs of the tally that lie there: itself, or both short logs of a pair. */
  public List<PlacedLog> logs() {
    return piece
        .log()
        .pair()
        .map(pair -> pair.halves().stream().map(this::half).toList())
        .orElseGet(() -> List.of(this));
  }

  private PlacedLog half(Pair.Half half) {
    return new PlacedLog(half.piece(), wall, round, half.buttAtStart());
  }

  /** Returns the diameter at a distance from the wall's left trimmed end, seen from outside. */
  public Length fromLeft(Length distance) {
    return piece.at(buttAtStart ? piece.trimmed().minus(distance) : distance);
  }

  /** Returns the name of the corner at which the butt lies. */
  public String buttCorner(Building building) {
    return buttAtStart ? building.startCorner(wall) : building.endCorner(wall);
  }

  /** Returns the wall crossing at the butt end. */
  public Wall crossingAtButt(Building building) {
    return buttAtStart ? building.before(wall) : building.after(wall);
  }

  /** Returns the wall crossing at the tip end. */
  public Wall crossingAtTip(Building building) {
    return buttAtStart ? building.after(wall) : building.before(wall);
  }

  /** Returns the distance from the trimmed butt end to the near shoulder, {@code T_x + o}. */
  public Length nearShoulder(Building building, Length overhang) {
    return crossingAtButt(building).thickness().plus(overhang);
  }

  /** Returns the distance from the trimmed butt end to the far shoulder, {@code Λ − (T_x + o)}. */
  public Length farShoulder(Building building, Length overhang) {
    return piece.trimmed().minus(crossingAtTip(building).thickness()).minus(overhang);
  }
}
