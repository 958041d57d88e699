package roundbook.job;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.units.Length;

/**
 * The stems of a job, and which of its logs are pieces of them.
 *
 * @param all the stems, in the order they were read
 * @param cuts for each log that is a piece of a stem, by its tag, where it is cut
 * @param byRule what cutting by rule would have come to; empty where that was not tried
 */
public record Stems(List<Stem> all, Map<String, CrossCut> cuts, Optional<ByRule> byRule) {
  /** No stem. */
  public static final Stems NONE = new Stems(List.of(), Map.of(), Optional.empty());

  /** Copies list and map, which keeps its order. */
  public Stems {
    all = List.copyOf(all);
    cuts = Collections.unmodifiableMap(new LinkedHashMap<>(cuts));
  }

  /**
   * Where a log is cut from its stem.
   *
   * @param stem the stem's tag
   * @param from the distance of its butt from the stem's
   * @param isCut whether it is cut already
   * @param mid its middle as measured since it was planned with; empty where it was not
   */
  public record CrossCut(String stem, Length from, boolean isCut, Optional<Length> mid) {
    /** Returns a piece that is planned and not cut. */
    public static CrossCut planned(String stem, Length from) {
      return new CrossCut(stem, from, false, Optional.empty());
    }
  }

  /**
   * What the stems would have come to, cut from the butt, the longest piece first.
   *
   * @param rounds how many rounds would stand
   * @param flagged how many joints of them would have a gap outside its limits
   */
  public record ByRule(int rounds, int flagged) {}

  /** Returns stems of which nothing is cut. */
  public static Stems of(List<Stem> stems) {
    return new Stems(stems, Map.of(), Optional.empty());
  }

  /** Returns these and further stems, of which nothing is cut. */
  public Stems plus(List<Stem> more) {
    return new Stems(Stream.concat(all.stream(), more.stream()).toList(), cuts, byRule);
  }

  /** Returns the same with what cutting by rule would have come to. */
  public Stems with(ByRule rule) {
    return new Stems(all, cuts, Optional.of(rule));
  }

  /** Returns the same stems with every diameter so much smaller. */
  Stems thinnedBy(Length difference) {
    return new Stems(all.stream().map(stem -> stem.thinnedBy(difference)).toList(), cuts, byRule);
  }

  /**
   * Returns logs with the middles that were measured when they were cut: every diameter is as much
   * larger or smaller as the middle is.
   */
  List<Log> measured(List<Log> logs) {
    return logs.stream()
        .map(
            log ->
                Optional.ofNullable(cuts.get(log.tag()))
                    .flatMap(CrossCut::mid)
                    .map(mid -> log.thinnedBy(log.mid().minus(mid)))
                    .orElse(log))
        .toList();
  }

  /** Returns the same stems when what was measured of their pieces stands in the logs. */
  Stems taken() {
    Map<String, CrossCut> taken = new LinkedHashMap<>();
    cuts.forEach(
        (tag, cut) ->
            taken.put(tag, new CrossCut(cut.stem(), cut.from(), cut.isCut(), Optional.empty())));
    return new Stems(all, taken, byRule);
  }

  /** Returns whether there is none. */
  public boolean isEmpty() {
    return all.isEmpty();
  }

  /** Returns the stem that a log is a piece of; empty where it is of none. */
  public Optional<Stem> of(Log log) {
    return Optional.ofNullable(cuts.get(log.tag())).flatMap(cut -> stem(cut.stem()));
  }

  /** Returns the stem of a tag; empty where there is none. */
  public Optional<Stem> stem(String tag) {
    return all.stream().filter(stem -> stem.tag().equals(tag)).findFirst();
  }

  /** Returns those of some logs that are pieces of a stem, from its butt up. */
  public List<Log> pieces(Stem stem, List<Log> logs) {
    return logs.stream()
        .filter(log -> cuts.containsKey(log.tag()))
        .filter(log -> cuts.get(log.tag()).stem().equals(stem.tag()))
        .sorted(Comparator.comparing(log -> cuts.get(log.tag()).from()))
        .toList();
  }

  /** Returns where a log begins on its stem. */
  public Length from(Log log) {
    return cuts.get(log.tag()).from();
  }
}
