package roundbook.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import roundbook.job.Piece;

/**
 * Natural diameter of a log or piece at rising distances along it.
 *
 * <p>Between two stations the diameter runs straight; beyond the outermost ones their straight line
 * goes on. Distances and diameters are in one unit of length.
 *
 * @param stations two or more stations at rising distances
 */
public record RoundProfile(List<ProfilePoint> stations) {
  /**
   * One diameter at one distance.
   *
   * @param distance how far along the piece
   * @param diameter the natural diameter there
   */
  public record ProfilePoint(double distance, double diameter) {}

  /** Checks that the distances rise and that no diameter is negative. */
  public RoundProfile {
    stations = List.copyOf(stations);
    if (stations.size() < 2) {
      throw new IllegalArgumentException("a profile needs two stations or more");
    }
    for (int i = 0; i < stations.size(); i++) {
      ProfilePoint station = stations.get(i);
      boolean rises = i == 0 || station.distance() > stations.get(i - 1).distance();
      if (!rises || !(station.diameter() >= 0) || Double.isInfinite(station.diameter())) {
        throw new IllegalArgumentException("station " + i + " is out of order: " + station);
      }
    }
  }

  /**
   * Returns the profile of diameters spaced evenly along a length, the first and the last at its
   * ends: butt, middle and tip, for instance.
   */
  public static RoundProfile ofEven(double length, double... diameters) {
    List<ProfilePoint> stations = new ArrayList<>();
    for (int i = 0; i < diameters.length; i++) {
      stations.add(new ProfilePoint(length * i / (diameters.length - 1), diameters[i]));
    }
    return new RoundProfile(stations);
  }

  /** Returns the profile of a trimmed piece in inches, from its trimmed butt end. */
  public static RoundProfile inchesOf(Piece piece) {
    List<ProfilePoint> stations =
        piece.log().profile().stations().stream()
            .map(s -> new ProfilePoint(s.fromButt().inches(), s.diameter().inches()))
            .toList();
    double butt = piece.cutOffButt().inches();
    return new RoundProfile(stations).between(butt, butt + piece.trimmed().inches());
  }

  /** Returns the distance of the first station. */
  public double start() {
    return stations.get(0).distance();
  }

  /** Returns the distance of the last station. */
  public double end() {
    return stations.get(stations.size() - 1).distance();
  }

  /** Returns the length from the first station to the last. */
  public double length() {
    return end() - start();
  }

  /** Returns the diameter at a distance. */
  public double at(double distance) {
    int upper = 1;
    while (upper < stations.size() - 1 && distance > stations.get(upper).distance()) {
      upper++;
    }
    ProfilePoint low = stations.get(upper - 1);
    ProfilePoint high = stations.get(upper);
    if (distance == high.distance()) {
      return high.diameter();
    }
    double share = (distance - low.distance()) / (high.distance() - low.distance());
    return low.diameter() + share * (high.diameter() - low.diameter());
  }

  /**
   * Returns the part between two cut positions, its distances counted from the first cut.
   *
   * @param from the cut nearer the start
   * @param to the cut nearer the end, beyond {@code from}
   */
  public RoundProfile between(double from, double to) {
    double length = to - from;
    List<ProfilePoint> part = new ArrayList<>();
    part.add(new ProfilePoint(0, at(from)));
    // Shifted first: two distances that differ by a rounding may be one when they are shifted.
    stations.stream()
        .map(station -> new ProfilePoint(station.distance() - from, station.diameter()))
        .filter(station -> station.distance() > 0 && station.distance() < length)
        .forEach(part::add);
    part.add(new ProfilePoint(length, at(to)));
    return new RoundProfile(part);
  }

  /** Returns the same piece turned end for end, its distances counted from the other end. */
  public RoundProfile reversed() {
    List<ProfilePoint> turned = new ArrayList<>();
    for (ProfilePoint station : stations) {
      turned.add(0, new ProfilePoint(end() - station.distance(), station.diameter()));
    }
    return new RoundProfile(turned);
  }

  /** Returns the straight tapers that make up the piece, split where it is {@code 2e} thick. */
  List<Taper> tapers(double halfThickness) {
    List<Taper> tapers = new ArrayList<>();
    for (int i = 1; i < stations.size(); i++) {
      ProfilePoint low = stations.get(i - 1);
      ProfilePoint high = stations.get(i);
      new Taper(low.distance(), high.distance(), low.diameter() / 2, high.diameter() / 2)
          .splitAt(halfThickness)
          .forEach(tapers::add);
    }
    return tapers;
  }

  /** Adds the distances of the stations, and of where the piece is just so thick, to a set. */
  void addKinks(double diameter, TreeSet<Double> kinks) {
    tapers(diameter / 2).forEach(taper -> kinks.add(taper.from()));
    kinks.add(end());
  }
}
