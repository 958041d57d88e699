package roundbook.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.units.Length;

/** Pens of four walls, N and S laid first. */
public final class Rings {
  private Rings() {}

  /**
   * Returns a pen's walls; a further pen stands 10 ft from the one before.
   *
   * @param along the outside length of N and S, in inches
   * @param deep that of E and W
   * @param number what stands behind their names
   */
  public static List<Wall> ring(int pen, long along, long deep, String number) {
    List<Wall> walls = new ArrayList<>();
    for (String side : List.of("N", "E", "S", "W")) {
      boolean first = side.equals("N") || side.equals("S");
      Optional<Length> at =
          pen > 1 && side.equals("W") ? Optional.of(Length.ofInches(120)) : Optional.empty();
      Stand stand = new Stand(pen, List.of(), at);
      Length outside = Length.ofInches(first ? along : deep);
      walls.add(new Wall(side + number, outside, first, Length.ofInches(6), "", stand));
    }
    return walls;
  }
}
