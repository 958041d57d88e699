package roundbook.harvester;

import java.util.HashMap;
import java.util.Map;

/** One log as the harvester cut it, filled while its element is read. */
final class CutLog {
  /** The line that its element begins on. */
  final int line;

  /** 1 for the butt log of its tree, rising to the top. */
  String key = "";

  /** Which product it was cut for. */
  String product = "";

  /** How far its butt is from the tree's butt, in the file's unit of length; NaN if not told. */
  double start = Double.NaN;

  /** Its length in the file's unit of length; NaN if not told. */
  double length = Double.NaN;

  private final Map<String, Double> diameters = new HashMap<>();

  CutLog(int line) {
    this.line = line;
  }

  void put(String category, double diameter) {
    diameters.putIfAbsent(category.strip().toLowerCase(java.util.Locale.ROOT), diameter);
  }

  /** Returns a diameter such as {@code mid ub}; NaN where it was not measured. */
  double diameter(String place, boolean underBark) {
    return diameters.getOrDefault(place + (underBark ? " ub" : " ob"), Double.NaN);
  }

  /** Returns whether middle and top are known under bark. */
  boolean isUnderBark() {
    return !Double.isNaN(diameter("mid", true)) && !Double.isNaN(diameter("top", true));
  }

  /** Returns the bark, both sides together, at a place; NaN where it is not known. */
  double bark(String place) {
    return diameter(place, false) - diameter(place, true);
  }
}
