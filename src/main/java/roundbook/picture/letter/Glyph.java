package roundbook.picture.letter;

import java.util.ArrayList;
import java.util.List;
import roundbook.picture.raster.Spot;

/**
 * One letter as strokes on a grid, its base line at nothing and its capitals ten high.
 *
 * @param width how wide it is, without the space to the next letter
 * @param strokes its strokes, upwards positive
 */
public record Glyph(double width, List<Stroke> strokes) {
  /** Copies the list. */
  public Glyph {
    strokes = List.copyOf(strokes);
  }

  /**
   * One stroke of the pen, or a surface.
   *
   * @param path its points
   * @param filled whether the path bounds a surface to be filled
   */
  public record Stroke(List<Spot> path, boolean filled) {
    /** Copies the list. */
    public Stroke {
      path = List.copyOf(path);
    }

    /** Returns the stroke scaled about nothing, then moved. */
    public Stroke moved(double scale, Spot by) {
      List<Spot> moved = new ArrayList<>(path.size());
      for (Spot spot : path) {
        moved.add(new Spot(spot.x() * scale + by.x(), spot.y() * scale + by.y()));
      }
      return new Stroke(moved, filled);
    }
  }

  /** Returns how high its strokes reach. */
  double top() {
    return strokes.stream()
        .flatMap(stroke -> stroke.path().stream())
        .mapToDouble(Spot::y)
        .max()
        .orElse(0);
  }
}
