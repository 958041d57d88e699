package roundbook.takeoff;

/**
 * Two sling legs of one length that lift a log level from one hook.
 *
 * <p>The balance of forces: two legs at an angle from the level carry the load by the upright part
 * of their pulls, so each pulls {@code load / (2 sin angle)}. That is the pull of a still load;
 * jerks and wind come on top. Caution: numbers alone choose no rigging.
 *
 * @param degrees the angle of each leg from the level, over 0 and up to 90
 */
public record SlingPair(double degrees) {
  /**
   * Checks the angle.
   *
   * @throws IllegalArgumentException if no log hangs on legs at this angle
   */
  public SlingPair {
    if (!(degrees > 0 && degrees <= 90)) {
      throw new IllegalArgumentException("no angle of sling legs: " + degrees);
    }
  }

  /**
   * Returns legs of a length that meet the log so far apart, both in one unit.
   *
   * @throws IllegalArgumentException if the legs do not reach
   */
  public static SlingPair of(double leg, double apart) {
    return new SlingPair(StrictMath.toDegrees(StrictMath.acos(apart / 2 / leg)));
  }

  /** Returns what each leg pulls, in the unit of the load. */
  public double pull(double load) {
    return load / 2 / StrictMath.sin(StrictMath.toRadians(degrees));
  }

  /** Returns how long each leg is as a part of the distance between the two on the log. */
  public double legOfSpan() {
    return 0.5 / StrictMath.cos(StrictMath.toRadians(degrees));
  }
}
