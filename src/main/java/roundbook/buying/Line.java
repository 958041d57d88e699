package roundbook.buying;

import java.util.Optional;
import roundbook.units.Length;
import roundbook.wood.LogRule;

/**
 * One line of an order: logs that are alike for the yard.
 *
 * @param number the line's number, from 1
 * @param use what the logs are for: the walls' names, such as {@code N S}, or plates, joists and
 *     the like by the builder's word
 * @param rounds the rounds that they are for; empty where they are for no wall
 * @param from which log of the tree they are
 * @param count how many
 * @param lengths how long
 * @param band how thick
 * @param tips how thick at the thin end
 * @param weight the green weight of a cubic foot
 */
public record Line(
    int number,
    String use,
    Optional<Rounds> rounds,
    From from,
    Count count,
    LogLengths lengths,
    Band band,
    LeastTips tips,
    Weight weight) {
  private static final double CUBIC_FOOT = 1728;

  /** Which log of the tree a yard should send. */
  public enum From {
    /** The log at the butt, longer by the flare that is sawn off. */
    BUTT("butt"),
    /** A log from higher up. */
    SECOND("second"),
    /** Either, where butt logs are ordered no longer than others. */
    ANY("any");

    private final String word;

    From(String word) {
      this.word = word;
    }

    /** Returns the word used in tables. */
    public String word() {
      return word;
    }
  }

  /**
   * Consecutive rounds.
   *
   * @param first the lowest, from 1
   * @param last the highest
   */
  public record Rounds(int first, int last) {
    @Override
    public String toString() {
      return first == last ? String.valueOf(first) : first + "-" + last;
    }
  }

  /**
   * How many logs.
   *
   * @param logs those that the walls hold
   * @param spares those kept beside them
   */
  public record Count(int logs, int spares) {
    /** Returns all of them. */
    public int all() {
      return logs + spares;
    }
  }

  /**
   * The middle diameters that are wanted.
   *
   * @param from the least
   * @param to the largest
   */
  public record Band(Length from, Length to) {
    /** Returns the middle of the band. */
    public Length middle() {
      return from.plus(to).dividedBy(2);
    }
  }

  /**
   * What a cubic foot of green wood weighs, in pounds.
   *
   * @param usual as the table of species has it
   * @param least if all were heartwood
   * @param most if all were sapwood
   */
  public record Weight(double usual, double least, double most) {}

  /** Returns whether the logs are for walls, and not for plates, joists and the like. */
  public boolean isOfWalls() {
    return rounds.isPresent();
  }

  /** Returns the rounds, such as {@code 1-3}; empty where the logs are for no wall. */
  public String roundsText() {
    return rounds.map(Rounds::toString).orElse("");
  }

  /**
   * Returns the volume of one log as it is delivered, in cubic feet: by the middle of its band
   * (Huber), which reads a butt log with its flare some 6 % low.
   */
  public double cubicFeet() {
    double length = lengths.delivered().inches();
    return LogRule.huber(band.middle().inches(), length) / CUBIC_FOOT;
  }

  /** Returns the usual green weight of one log as it is delivered, in pounds. */
  public double pounds() {
    return cubicFeet() * weight.usual();
  }

  /** Returns the most that one log may weigh, in pounds. */
  public double poundsAtMost() {
    return cubicFeet() * weight.most();
  }
}
