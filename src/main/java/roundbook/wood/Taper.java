package roundbook.wood;

import java.util.stream.Stream;

/**
 * A stretch of round wood with a straight taper, and the integrals along it.
 *
 * <p>With r the radius and e half the sawn thickness, and {@code q = √(r² − e²)}, the part of a
 * sawn section above the centre line is {@code S = e q + r² asin(e / r)}, and {@code π r² / 2}
 * where {@code r <= e}. Its integrals over r are closed:
 *
 * <pre>
 * G(r) = ∫ S dr   = (2e/3) r q − (e³/3) acosh(r/e) + (r³/3) asin(e/r)
 * J(r) = ∫ r S dr = (5e/12) q³ + (e³/4) q + (r⁴/4) asin(e/r)
 * </pre>
 *
 * <p>Where the ends differ little the difference of two large values would lose its digits; there
 * Gauss's three points are exact to the last ones.
 *
 * @param from distance of the first end
 * @param to distance of the second end
 * @param first radius at the first end
 * @param last radius at the second end
 */
record Taper(double from, double to, double first, double last) {
  private static final double LITTLE = 1e-5;
  private static final double LITTLE_FOR_MOMENT = 1e-3;
  private static final double GAUSS = Math.sqrt(0.6);

  double length() {
    return to - from;
  }

  /** Splits the taper where its radius is just so, if that lies inside it. */
  Stream<Taper> splitAt(double radius) {
    if ((first - radius) * (last - radius) >= 0) {
      return Stream.of(this);
    }
    double middle = from + length() * (radius - first) / (last - first);
    return Stream.of(new Taper(from, middle, first, radius), new Taper(middle, to, radius, last));
  }

  /** Half the section of round wood sawn to a thickness: the part above the centre line. */
  static double halfSection(double radius, double e) {
    if (radius <= e) {
      return Math.PI * radius * radius / 2;
    }
    return e * reach(radius, e) + radius * radius * StrictMath.asin(e / radius);
  }

  /** How far a face e from the centre plane reaches above the centre line: √(r² − e²). */
  static double reach(double radius, double e) {
    return radius <= e ? 0 : Math.sqrt((radius - e) * (radius + e));
  }

  /** The integral of the half section along the taper; the taper is already split at e. */
  double halfVolume(double e) {
    if (Math.max(first, last) <= e) {
      return Math.PI / 6 * length() * (first * first + first * last + last * last);
    }
    if (isLittle(LITTLE)) {
      return length() * gauss(0, e);
    }
    return length() * (bigG(last, e) - bigG(first, e)) / (last - first);
  }

  /** The integral of distance times half section along the taper, already split at e. */
  double halfMoment(double e) {
    if (isLittle(LITTLE_FOR_MOMENT)) {
      return from * length() * gauss(0, e) + length() * length() * gauss(1, e);
    }
    double rise = last - first;
    double g = bigG(last, e) - bigG(first, e);
    double j = bigJ(last, e) - bigJ(first, e);
    double scale = length() / rise;
    return from * scale * g + scale * scale * (j - first * g);
  }

  /** The integral of the reach of the face along the taper, already split at e. */
  double faceArea(double e) {
    double q1 = reach(first, e);
    double q2 = reach(last, e);
    if (q1 + q2 == 0) {
      return 0;
    }
    if (isLittle(LITTLE)) {
      return length() * 2 * (q1 * q1 + q1 * q2 + q2 * q2) / (3 * (q1 + q2));
    }
    return length() * (bigH(last, e) - bigH(first, e)) / (last - first);
  }

  private boolean isLittle(double share) {
    return Math.abs(last - first) <= share * Math.max(first, last);
  }

  /** The mean of {@code share^power S} along the taper, share running from 0 to 1. */
  private double gauss(int power, double e) {
    double sum = 8 * gaussTerm(0, power, e);
    return (sum + 5 * gaussTerm(-GAUSS, power, e) + 5 * gaussTerm(GAUSS, power, e)) / 18;
  }

  private double gaussTerm(double abscissa, int power, double e) {
    double share = (1 + abscissa) / 2;
    double half = halfSection(first + share * (last - first), e);
    return power == 0 ? half : share * half;
  }

  private static double bigG(double r, double e) {
    if (r <= e) {
      return Math.PI * r * r * r / 6;
    }
    double q = reach(r, e);
    double cube = r * r * r * StrictMath.asin(e / r) - e * e * e * acosh(r, e);
    return (2 * e * r * q + cube) / 3;
  }

  private static double bigJ(double r, double e) {
    if (r <= e) {
      return Math.PI * r * r * r * r / 8;
    }
    double q = reach(r, e);
    double fourth = r * r * r * r * StrictMath.asin(e / r) / 4;
    return 5 * e / 12 * q * q * q + e * e * e * q / 4 + fourth;
  }

  private static double bigH(double r, double e) {
    double q = reach(r, e);
    return e <= 0 ? r * r / 2 : (r * q - e * e * acosh(r, e)) / 2;
  }

  /** acosh(r / e), exact also where r is hardly more than e. */
  private static double acosh(double r, double e) {
    return r <= e ? 0 : StrictMath.log1p((r - e + reach(r, e)) / e);
  }
}
