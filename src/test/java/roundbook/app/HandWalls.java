package roundbook.app;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;

/**
 * The walls of a sample worked out from the tally and the places of its logs alone.
 *
 * <p>Nothing of the program is used: diameters run straight between the three that were measured,
 * areas and volumes are counted on a fine grid. Everything is in the sample's own unit.
 */
final class HandWalls {
  private static final int SLICES = 500;
  private static final int CELLS = 80;

  /** The left corner of each wall seen from outside. */
  private static final Map<String, String> LEFT =
      Map.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");

  private final String unit;
  private final double thickness;
  private final double overhang;
  private final Map<String, CSVRecord> logs;
  private final List<CSVRecord> pieces;

  HandWalls(SampleRun run, boolean metric) {
    this.unit = metric ? "_mm" : "_in";
    this.thickness = metric ? 150 : 6;
    this.overhang = metric ? 75 : 3;
    this.logs =
        run.table("logs").stream()
            .collect(Collectors.toMap(row -> row.get("log"), Function.identity()));
    this.pieces = run.table("pieces");
  }

  double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column + unit));
  }

  List<CSVRecord> pieces() {
    return pieces;
  }

  CSVRecord piece(String wall, int round) {
    return pieces.stream()
        .filter(row -> row.get("wall").equals(wall) && row.get("round").equals("" + round))
        .findFirst()
        .orElseThrow();
  }

  String species(CSVRecord piece) {
    return logs.get(piece.get("log")).get("species");
  }

  /** The diameter at a distance from the trimmed butt. */
  double diameter(CSVRecord piece, double fromButt) {
    CSVRecord log = logs.get(piece.get("log"));
    double half = number(log, "length") / 2;
    double at = number(piece, "cut_off_butt") + fromButt;
    double low = number(log, at < half ? "butt" : "mid");
    double high = number(log, at < half ? "mid" : "tip");
    return low + (high - low) * (at < half ? at : at - half) / half;
  }

  /** The diameter at a distance from the left trimmed end, seen from outside. */
  double fromLeft(CSVRecord piece, double x) {
    boolean buttLeft = piece.get("butt_at").equals(LEFT.get(piece.get("wall")));
    return diameter(piece, buttLeft ? x : number(piece, "trimmed") - x);
  }

  /** The greatest diameter over an opening, x from the left outside corner. */
  double thickest(CSVRecord piece, double left, double width) {
    double most = 0;
    for (int i = 0; i <= SLICES; i++) {
      most = Math.max(most, fromLeft(piece, overhang + left + width * i / SLICES));
    }
    return most;
  }

  /** The volume of a trimmed piece, round or sawn. */
  double volume(CSVRecord piece, boolean sawn) {
    double length = number(piece, "trimmed");
    double total = 0;
    for (int i = 0; i < SLICES; i++) {
      double r = diameter(piece, length * (i + 0.5) / SLICES) / 2;
      total += sawn ? 2 * across(r, 0, thickness / 2) * 2 : Math.PI * r * r;
    }
    return total * length / SLICES;
  }

  /** Half the height of a section summed over a part of its width. */
  private double across(double r, double from, double to) {
    double dv = (to - from) / CELLS;
    double total = 0;
    for (int j = 0; j < CELLS; j++) {
      double v = from + (j + 0.5) * dv;
      total += Math.sqrt(r * r - v * v) * dv;
    }
    return total;
  }

  /** Where the sawn piece balances, from its trimmed butt. */
  double balance(CSVRecord piece) {
    double length = number(piece, "trimmed");
    double moment = 0;
    double total = 0;
    for (int i = 0; i < SLICES; i++) {
      double u = length * (i + 0.5) / SLICES;
      double section = across(diameter(piece, u) / 2, 0, thickness / 2);
      moment += u * section;
      total += section;
    }
    return moment / total;
  }

  /** A stretch of joint from one distance to another from the left trimmed end. */
  record Stretch(CSVRecord lower, CSVRecord upper, double from, double to) {}

  /** The volume of a stretch over a part of the wall's half width, both halves. */
  double jointVolume(Stretch stretch, double from, double to) {
    double total = 0;
    double spacing = spacing(stretch);
    for (int i = 0; i < SLICES; i++) {
      double x = at(stretch, i);
      double wood = across(fromLeft(stretch.lower(), x) / 2, from, to);
      wood += across(fromLeft(stretch.upper(), x) / 2, from, to);
      total += 2 * (spacing * (to - from) - wood);
    }
    return total * (stretch.to() - stretch.from()) / SLICES;
  }

  /** The area to be seen on one face. */
  double faceArea(Stretch stretch) {
    double total = 0;
    for (int i = 0; i < SLICES; i++) {
      total += height(stretch, at(stretch, i), thickness / 2);
    }
    return total * (stretch.to() - stretch.from()) / SLICES;
  }

  /** The greatest height at so much from the middle of the wall. */
  double widest(Stretch stretch, double v) {
    double most = 0;
    for (int i = 0; i <= SLICES; i++) {
      double x = stretch.from() + (stretch.to() - stretch.from()) * i / SLICES;
      most = Math.max(most, height(stretch, x, v));
    }
    return most;
  }

  private double height(Stretch stretch, double x, double v) {
    double low = fromLeft(stretch.lower(), x) / 2;
    double high = fromLeft(stretch.upper(), x) / 2;
    return spacing(stretch) - Math.sqrt(low * low - v * v) - Math.sqrt(high * high - v * v);
  }

  private double spacing(Stretch stretch) {
    return number(stretch.upper(), "centre_height") - number(stretch.lower(), "centre_height");
  }

  private static double at(Stretch stretch, int slice) {
    return stretch.from() + (stretch.to() - stretch.from()) * (slice + 0.5) / SLICES;
  }
}
