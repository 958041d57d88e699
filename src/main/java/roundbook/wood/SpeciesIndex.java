package roundbook.wood;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.wood.Species.Match;

/** Finds species by the names that tallies use. */
final class SpeciesIndex {
  private static final List<Species> ALL = SpeciesData.read();
  private static final Map<String, Match> BY_KEY = index();

  private SpeciesIndex() {}

  static List<Species> all() {
    return ALL;
  }

  /** An unknown tree of a known kind ("bog spruce") is that kind's stand-in. */
  static Optional<Match> find(String name) {
    Match whole = BY_KEY.get(key(name));
    return whole == null ? byKind(name) : Optional.of(whole);
  }

  private static Optional<Match> byKind(String name) {
    return SpeciesData.standIns().keySet().stream()
        .filter(kind -> words(name).containsAll(words(kind)))
        .max((a, b) -> Integer.compare(words(a).size(), words(b).size()))
        .map(kind -> BY_KEY.get(key(kind)));
  }

  private static Map<String, Match> index() {
    Map<String, Match> index = new HashMap<>();
    Map<String, List<String>> others = SpeciesData.otherNames();
    Map<String, Species> byName = new HashMap<>();
    for (Species species : ALL) {
      byName.put(species.name(), species);
      Match match = new Match(species, false);
      add(index, species.name(), match);
      add(index, species.latin(), match);
      others.getOrDefault(species.name(), List.of()).forEach(other -> add(index, other, match));
    }
    SpeciesData.standIns()
        .forEach((kind, name) -> add(index, kind, new Match(byName.get(name), true)));
    return Map.copyOf(index);
  }

  private static void add(Map<String, Match> index, String name, Match match) {
    if (index.putIfAbsent(key(name), match) != null) {
      throw new IllegalStateException("two species are called " + name);
    }
  }

  private static String key(String name) {
    return String.join(" ", words(name));
  }

  /** The words of a name in the order of the alphabet, without marks, without a plural s. */
  private static List<String> words(String name) {
    return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .filter(word -> !word.isEmpty())
        .map(word -> word.length() > 3 && word.endsWith("s") ? singular(word) : word)
        .sorted()
        .collect(Collectors.toList());
  }

  private static String singular(String word) {
    return word.substring(0, word.length() - 1);
  }
}
