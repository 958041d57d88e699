package roundbook.harvester;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** One tree as the harvester processed it, filled while its element is read. */
final class Stem {
  /** The line that its element begins on. */
  final int line;

  /** The key that the file gives it. */
  String key = "";

  /** The key of its species group. */
  String speciesKey = "";

  /** Whether its diameters along the stem are over bark. */
  boolean overBark = true;

  /** Diameters along the stem by distance from its butt, both in the file's units. */
  final TreeMap<Double, Double> profile = new TreeMap<>();

  /** Its logs from the butt up. */
  final List<CutLog> logs = new ArrayList<>();

  Stem(int line) {
    this.line = line;
  }

  /** Returns how far a log's butt is from the tree's: as told, else the logs before it added up. */
  double startOf(CutLog log) {
    if (!Double.isNaN(log.start)) {
      return log.start;
    }
    double start = 0;
    for (CutLog before : logs) {
      if (before == log) {
        break;
      }
      start += Double.isNaN(before.length) ? 0 : before.length;
    }
    return start;
  }
}
