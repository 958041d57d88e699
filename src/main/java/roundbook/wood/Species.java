package roundbook.wood;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A kind of tree, with its published weight, shrinkage and moisture.
 *
 * <p>Each figure carries its source and whether it was read there or is from memory; what is from
 * memory must be shown so. Figures are means of many trees, and single logs stray far from them:
 * weights serve to choose gear, with a margin, never to load it to its limit.
 *
 * @param common the common name, of one species or of a kind
 * @param kinds of how many species the figures are means; 0 for a species of its own
 * @param latin the botanical name
 * @param figures the figures known
 */
public record Species(String common, int kinds, String latin, Map<Property, Figure> figures) {
  /** Weight of a cubic foot of water, lb. */
  private static final double WATER = 62.43;

  /** Kilograms in a cubic metre for each pound in a cubic foot: 0.45359237 / 0.3048³. */

  /**
   * All sapwood over green weight, where no moisture is known: the middle of the softwoods here.
   */
  public static final double WETTER = 1.41;

  /** All heartwood over green weight, where no moisture is known: the middle of the softwoods. */
  public static final double DRIER = 0.88;

  /** Copies the figures in their own order. */
  public Species {
    figures = Collections.unmodifiableMap(new EnumMap<>(figures));
  }

  /** What a figure is of, and its unit. */
  public enum Property {
    /** Radial loss from green to ovendry, percent. */
    RADIAL,
    /** Tangential loss from green to ovendry, percent. */
    TANGENTIAL,
    /** Loss of volume from green to ovendry, percent. */
    VOLUMETRIC,
    /** Fibre saturation point, percent of ovendry weight. */
    SATURATION,
    /** Ovendry weight over the weight of the green volume of water. */
    GRAVITY,
    /** Weight of a cubic foot of green wood without bark, lb. */
    GREEN_WEIGHT,
    /** Moisture of green heartwood, percent; not known for all. */
    HEARTWOOD_MOISTURE,
    /** Moisture of green sapwood, percent; not known for all. */
    SAPWOOD_MOISTURE
  }

  /** Whether a figure was read in a copy of its source or is from memory. */
  public enum Basis {
    /** Read in a copy or transcription of the source. */
    READ,
    /** From memory of the source: verify before relying on it. */
    MEMORY
  }

  /**
   * A published figure.
   *
   * @param value the figure, in the unit of its property
   * @param basis whether it was read or is from memory
   * @param source where it is published
   * @param kinds of how many species it is the mean; 0 for a species of its own
   */
  public record Figure(double value, Basis basis, String source, int kinds) {}

  /** How well a name in a tally says which tree it is. */
  public enum Sureness {
    /** The name is that of one species. */
    NAMED,
    /** The name is of a kind, such as pine or spruce; the means of its species stand in: say so. */
    KIND,
    /** The name is missing or unknown; the means of all softwoods stand in: say so. */
    UNKNOWN
  }

  /**
   * What a name in a tally was taken for.
   *
   * @param species whose figures to use
   * @param sureness whether they are of one species, or means that stand in for it
   */
  public record Match(Species species, Sureness sureness) {
    /** Returns whether the figures only stand in, so that the builder must be warned. */
    public boolean standIn() {
      return sureness != Sureness.NAMED;
    }
  }

  /** Which way across the grain a loss is counted. */
  public enum Grain {
    /** Along the rays, from heart to bark: the least loss. */
    RADIAL,
    /** Along the rings: the greatest loss. */
    TANGENTIAL,
    /** The mean of the two, for a log with its heart boxed in. */
    MEAN
  }

  /**
   * A least and a most weight of a cubic foot.
   *
   * @param least if all were heartwood, lb/ft³
   * @param most if all were sapwood, lb/ft³
   */
  public record Spread(double least, double most) {}

  /** Returns the name in plain tables, which tells of how many species the figures are means. */
  public String name() {
    return kinds == 0 ? common : common + " (mean of " + kinds + ")";
  }

  /** Returns every species known, in the order of the table. */
  public static List<Species> all() {
    return SpeciesIndex.all();
  }

  /**
   * Returns what a name in a tally means: a common name in any order of its words ("Spruce,
   * Engelmann"), the botanical name, or a kind ("pine"), for which the means of its species stand
   * in. For an unknown or empty name the means of all softwoods do.
   */
  public static Match find(String name) {
    return SpeciesIndex.find(name);
  }

  /**
   * Returns the figure of a property.
   *
   * @throws IllegalArgumentException if it is not known; only the two moistures may not be
   */
  public double value(Property property) {
    return figure(property)
        .orElseThrow(() -> new IllegalArgumentException(name() + " has no " + property))
        .value();
  }

  /** Returns the figure of a property with its source, if it is known. */
  public Optional<Figure> figure(Property property) {
    return Optional.ofNullable(figures.get(property));
  }

  /** Returns whether any figure of this species is from memory and must be shown so. */
  public boolean fromMemory() {
    return figures.values().stream().anyMatch(figure -> figure.basis() == Basis.MEMORY);
  }

  /** Returns the loss from green to ovendry, as a share. */
  public double ovendryLoss(Grain grain) {
    double radial = value(Property.RADIAL) / 100;
    double tangential = value(Property.TANGENTIAL) / 100;
    return switch (grain) {
      case RADIAL -> radial;
      case TANGENTIAL -> tangential;
      case MEAN -> (radial + tangential) / 2;
    };
  }

  /**
   * Returns the loss across the grain from one moisture to another, both in percent, as a share of
   * the size at the first.
   */
  public Shrinkage shrinkage(Grain grain, double now, double service) {
    double saturation = value(Property.SATURATION);
    Shrinkage already = Shrinkage.fromGreen(ovendryLoss(grain), now, saturation);
    return already.until(Shrinkage.fromGreen(ovendryLoss(grain), service, saturation));
  }

  /** Returns the weight of a cubic foot of green wood without bark, lb. */
  public double greenPounds() {
    return value(Property.GREEN_WEIGHT);
  }

  /**
   * Returns the weight of what was a cubic foot of green wood once it is dried to a moisture,
   * {@code 62.43 G (1 + M / 100)} lb; so a log measured green is weighed when dry.
   *
   * @param moisture M, in percent
   */
  public double poundsOfGreenFoot(double moisture) {
    return WATER * value(Property.GRAVITY) * (1 + moisture / 100);
  }

  /**
   * Returns between what weights a green cubic foot lies: all heartwood and all sapwood, and the
   * mean of the table at least within. Young, thin or winter-felled logs are near the upper end, so
   * gear for lifting is chosen by that one.
   */
  public Spread greenSpread() {
    double green = greenPounds();
    double heart = wetWeight(Property.HEARTWOOD_MOISTURE, DRIER);
    double sap = wetWeight(Property.SAPWOOD_MOISTURE, WETTER);
    return new Spread(Math.min(green, Math.min(heart, sap)), Math.max(green, Math.max(heart, sap)));
  }

  /**
   * Returns whether the least and the most weight only stand in, as shares of the green weight: no
   * moisture of heartwood or sapwood is known, and whoever chooses gear must be told.
   */
  public boolean spreadStandsIn() {
    return figure(Property.HEARTWOOD_MOISTURE).isEmpty()
        || figure(Property.SAPWOOD_MOISTURE).isEmpty();
  }

  private double wetWeight(Property moisture, double otherwise) {
    return figure(moisture)
        .map(figure -> poundsOfGreenFoot(figure.value()))
        .orElse(otherwise * greenPounds());
  }
}
