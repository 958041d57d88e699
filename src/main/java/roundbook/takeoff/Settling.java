package roundbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.stack.Stack;
import roundbook.wood.Moisture;
import roundbook.wood.Shrinkage;
import roundbook.wood.Species;
import roundbook.wood.Species.Grain;
import roundbook.wood.Species.Match;

/**
 * How much the walls come down as the logs dry, across the grain only.
 *
 * <p>A log with its heart boxed in loses something between the radial and the tangential figure of
 * its species; all three are given. Where several species stand in the walls the one that loses
 * most tangentially counts for the whole, so that no frame is pinched.
 *
 * @param moisture from what to what moisture
 * @param kinds the species of the placed logs, the commonest first
 * @param governing the species that counts, one of the kinds
 */
public record Settling(Moistures moisture, List<SpeciesCount> kinds, Species governing) {
  /** Copies the list. */
  public Settling {
    kinds = List.copyOf(kinds);
  }

  /**
   * From what to what moisture the logs dry.
   *
   * @param now moisture when built, percent; green where it is not told
   * @param service moisture in service, percent
   * @param source how the moisture in service is known
   * @param air temperature and humidity, where it follows from them
   */
  public record Moistures(Optional<Double> now, double service, Source source, Optional<Air> air) {
    /** Returns the moisture to shrink from; above fibre saturation nothing shrinks. */
    double start() {
      return now.orElse(Double.MAX_VALUE);
    }
  }

  /** How the moisture in service is known. */
  public enum Source {
    /** The builder set it. */
    SET,
    /** It follows from temperature and humidity of the air. */
    AIR,
    /** The program's default. */
    DEFAULT
  }

  /**
   * The air that the logs will stand in.
   *
   * @param degrees temperature, in °F in an inch job, in °C in a metric one
   * @param humidity relative humidity, percent
   */
  public record Air(double degrees, double humidity) {}

  /**
   * A species in the walls.
   *
   * @param match what its name in the tally was taken for
   * @param logs how many placed logs are of it
   */
  public record SpeciesCount(Match match, int logs) {}

  static Settling of(Job job, Stack stack) {
    List<SpeciesCount> kinds = kinds(stack);
    Moistures moisture = moistures(job.rules());
    Species governing =
        kinds.stream()
            .map(kind -> kind.match().species())
            .max(Comparator.comparingDouble(each -> loss(each, moisture, Grain.TANGENTIAL)))
            .orElseGet(() -> Species.find(job.rules().text(Setting.SPECIES)).species());
    return new Settling(moisture, kinds, governing);
  }

  private static List<SpeciesCount> kinds(Stack stack) {
    Map<String, Match> matches = new LinkedHashMap<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    List<Log> logs =
        stack.courses().stream()
            .flatMap(course -> course.logs().stream())
            .map(placed -> placed.piece().log())
            .toList();
    for (Log log : logs) {
      Match match = Species.find(log.traits().species());
      matches.putIfAbsent(match.species().name(), match);
      counts.merge(match.species().name(), 1, Integer::sum);
    }
    List<SpeciesCount> kinds = new ArrayList<>();
    matches.forEach((name, match) -> kinds.add(new SpeciesCount(match, counts.get(name))));
    kinds.sort(Comparator.comparingInt((SpeciesCount kind) -> -kind.logs()));
    return kinds;
  }

  private static Moistures moistures(BuildRules rules) {
    Optional<Double> now = number(rules, Setting.MOISTURE_NOW);
    Optional<Double> degrees = number(rules, Setting.AIR_TEMPERATURE);
    Optional<Double> humidity = number(rules, Setting.AIR_HUMIDITY);
    boolean byDefault =
        rules
            .value(Setting.MOISTURE_IN_SERVICE)
            .filter(value -> value.origin() != BuildRules.Origin.DEFAULT)
            .isEmpty();
    if (byDefault && degrees.isPresent() && humidity.isPresent()) {
      Air air = new Air(degrees.get(), humidity.get());
      return new Moistures(now, inAir(air, rules.metric()), Source.AIR, Optional.of(air));
    }
    double service = rules.number(Setting.MOISTURE_IN_SERVICE).doubleValue();
    return new Moistures(now, service, byDefault ? Source.DEFAULT : Source.SET, Optional.empty());
  }

  private static double inAir(Air air, boolean metric) {
    return metric
        ? Moisture.inEquilibriumCelsius(air.degrees(), air.humidity())
        : Moisture.inEquilibriumFahrenheit(air.degrees(), air.humidity());
  }

  private static Optional<Double> number(BuildRules rules, Setting setting) {
    return rules.optionalNumber(setting).map(Number::doubleValue);
  }

  private static double loss(Species species, Moistures moisture, Grain grain) {
    return species.shrinkage(grain, moisture.start(), moisture.service()).share();
  }

  /** Returns what a species loses here, one way across the grain. */
  public Shrinkage of(Species species, Grain grain) {
    return new Shrinkage(loss(species, moisture, grain));
  }

  /** Returns the least loss to expect. */
  public Shrinkage radial() {
    return of(governing, Grain.RADIAL);
  }

  /** Returns the mean of radial and tangential loss. */
  public Shrinkage mean() {
    return of(governing, Grain.MEAN);
  }

  /** Returns the most loss to expect, which frames are given room for. */
  public Shrinkage tangential() {
    return of(governing, Grain.TANGENTIAL);
  }

  /** Returns whether a figure of the species that counts is from memory. */
  public boolean fromMemory() {
    return governing.fromMemory();
  }
}
