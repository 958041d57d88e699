package roundbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * How each stem is cut up, from its butt to its top, in the order of bucking.
 *
 * @param stems the stems, those whose pieces lie lowest first, those not cut last
 */
public record CrossCuts(List<CutStem> stems) {
  /** Copies the list. */
  public CrossCuts {
    stems = List.copyOf(stems);
  }

  /** What becomes of a part of a stem. */
  public enum Fate {
    /** It lies in a wall. */
    PLACED,
    /** It could stand in for another; it stays on its stem until then where it is the last. */
    SPARE,
    /** It is sawn off. */
    WASTE,
    /** It is left above the last cut. */
    TOP
  }

  /**
   * A part of a stem between two cuts.
   *
   * @param from its distance from the stem's butt
   * @param to where it ends
   * @param fate what becomes of it
   * @param log the log that it is; empty for what is sawn off or left
   * @param placed where it lies, when it has a place
   */
  public record Part(
      Length from, Length to, Fate fate, Optional<Log> log, Optional<PlacedLog> placed) {
    /** Returns its length from saw cut to saw cut. */
    public Length raw() {
      return to.minus(from);
    }
  }

  /**
   * A stem and its parts.
   *
   * @param stem the stem
   * @param parts its parts from the butt up
   */
  public record CutStem(Stem stem, List<Part> parts) {
    /** Copies the list. */
    public CutStem {
      parts = List.copyOf(parts);
    }

    /** Returns the lowest round that a piece of it lies in; a large number where none does. */
    public int firstRound() {
      return parts.stream()
          .flatMap(part -> part.placed().stream())
          .mapToInt(PlacedLog::round)
          .min()
          .orElse(Integer.MAX_VALUE);
    }
  }

  /** Returns how the stems of a plan are cut up. */
  public static CrossCuts of(Plan plan) {
    return new CrossCuts(
        plan.job().stems().all().stream()
            .map(stem -> new CutStem(stem, parts(plan, stem)))
            .sorted(Comparator.comparingInt(CutStem::firstRound))
            .toList());
  }

  private static List<Part> parts(Plan plan, Stem stem) {
    List<Part> parts = new ArrayList<>();
    Length kerf = plan.job().rules().length(Setting.KERF);
    Length at = Length.ZERO;
    for (Log log : plan.job().stems().pieces(stem, plan.job().logs())) {
      Length from = plan.job().stems().from(log);
      if (from.minus(at).isMoreThan(kerf)) {
        parts.add(new Part(at, from, Fate.WASTE, Optional.empty(), Optional.empty()));
      }
      at = from.plus(log.length());
      Optional<PlacedLog> placed = placed(plan, log);
      Fate fate = placed.isPresent() ? Fate.PLACED : Fate.SPARE;
      parts.add(new Part(from, at, fate, Optional.of(log), placed));
    }
    if (at.isLessThan(stem.length())) {
      parts.add(new Part(at, stem.length(), Fate.TOP, Optional.empty(), Optional.empty()));
    }
    return parts;
  }

  private static Optional<PlacedLog> placed(Plan plan, Log log) {
    return plan.uses().stream()
        .filter(use -> use.log().tag().equals(log.tag()))
        .flatMap(use -> use.placed().stream())
        .findFirst();
  }
}
