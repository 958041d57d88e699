package roundbook.wood;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import roundbook.wood.Species.Basis;
import roundbook.wood.Species.Figure;
import roundbook.wood.Species.Match;
import roundbook.wood.Species.Property;
import roundbook.wood.Species.Sureness;

/** Finds species by the names that tallies use. */
final class SpeciesIndex {
  private static final Set<String> SOFTWOODS =
      Set.of(
          "Abies",
          "Calocedrus",
          "Cupressus",
          "Juniperus",
          "Larix",
          "Picea",
          "Pinus",
          "Pseudotsuga",
          "Sequoia",
          "Taxodium",
          "Thuja",
          "Tsuga");
  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}]+");
  private static final List<Species> ALL = SpeciesData.read();
  private static final Map<String, List<String>> WORDS =
      ALL.stream().collect(Collectors.toMap(Species::name, each -> words(each.name())));
  private static final Map<String, Match> BY_KEY = index();

  private SpeciesIndex() {}

  static List<Species> all() {
    return ALL;
  }

  static boolean isSoftwood(Species species) {
    return SOFTWOODS.contains(species.latin().split(" ")[0]);
  }

  /** Every word of a name counts first; then any words in it that name a kind ("bog spruce"). */
  static Match find(String name) {
    List<String> words = words(name);
    return Optional.ofNullable(BY_KEY.get(String.join(" ", words)))
        .or(() -> means(name, words))
        .or(() -> longestListedKind(words))
        .or(() -> words.stream().flatMap(word -> means(name, List.of(word)).stream()).findFirst())
        .orElseGet(SpeciesIndex::unknown);
  }

  private static Optional<Match> means(String name, List<String> wanted) {
    List<Species> kind = kind(wanted);
    return kind.isEmpty()
        ? Optional.empty()
        : Optional.of(new Match(mean(name.strip(), kind), Sureness.KIND));
  }

  private static Optional<Match> longestListedKind(List<String> words) {
    return BY_KEY.keySet().stream()
        .filter(key -> BY_KEY.get(key).standIn())
        .filter(key -> words.containsAll(List.of(key.split(" "))))
        .max(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
        .map(BY_KEY::get);
  }

  private static Match unknown() {
    List<Species> softwoods = ALL.stream().filter(SpeciesIndex::isSoftwood).toList();
    return new Match(mean("softwood", softwoods), Sureness.UNKNOWN);
  }

  /** A Douglas-fir is no fir, so it counts only where its own name is said. */
  private static List<Species> kind(List<String> wanted) {
    boolean fir = wanted.contains("fir") && !wanted.contains("dougla");
    return ALL.stream()
        .filter(species -> !wanted.isEmpty() && WORDS.get(species.name()).containsAll(wanted))
        .filter(species -> !(fir && species.latin().startsWith("Pseudotsuga")))
        .filter(species -> wanted.stream().anyMatch(nouns(species)::contains))
        .toList();
  }

  /** The word that names the kind: the last, and fir of Douglas-fir. */
  private static List<String> nouns(Species species) {
    String[] parts = species.name().split("[ -]");
    return words(parts[parts.length - 1].replace("redcedar", "cedar"));
  }

  private static Species mean(String name, List<Species> kind) {
    Map<Property, Figure> figures = new EnumMap<>(Property.class);
    for (Property property : Property.values()) {
      List<Figure> known =
          kind.stream().flatMap(species -> species.figure(property).stream()).toList();
      if (!known.isEmpty()) {
        figures.put(property, mean(known));
      }
    }
    return new Species(name, kind.size(), "", figures);
  }

  private static Figure mean(List<Figure> figures) {
    double mean = figures.stream().mapToDouble(Figure::value).average().orElseThrow();
    boolean memory = figures.stream().anyMatch(figure -> figure.basis() == Basis.MEMORY);
    Basis basis = memory ? Basis.MEMORY : Basis.READ;
    return new Figure(mean, basis, figures.get(0).source(), figures.size());
  }

  private static Map<String, Match> index() {
    Map<String, Match> index = new HashMap<>();
    Map<String, Species> byName = new HashMap<>();
    Map<String, List<String>> others = SpeciesData.otherNames();
    for (Species species : ALL) {
      byName.put(species.name(), species);
      Match match = new Match(species, Sureness.NAMED);
      add(index, species.name(), match);
      add(index, species.latin(), match);
      others.getOrDefault(species.name(), List.of()).forEach(other -> add(index, other, match));
    }
    SpeciesData.kinds()
        .forEach((kind, names) -> add(index, kind, names.stream().map(byName::get).toList()));
    SpeciesData.kindWords()
        .forEach(
            (kind, names) -> {
              List<Species> all = kind(List.of(kind));
              names.forEach(name -> add(index, name, all));
            });
    return Map.copyOf(index);
  }

  private static void add(Map<String, Match> index, String name, List<Species> kind) {
    add(index, name, new Match(mean(name, kind), Sureness.KIND));
  }

  private static void add(Map<String, Match> index, String name, Match match) {
    if (index.putIfAbsent(String.join(" ", words(name)), match) != null) {
      throw new IllegalStateException("two species are called " + name);
    }
  }

  /** The words of a name in the order of the alphabet, without marks, without a plural s. */
  private static List<String> words(String name) {
    String lower = name.toLowerCase(Locale.ROOT).replace("redcedar", "red cedar");
    return Arrays.stream(BETWEEN.split(lower))
        .filter(word -> !word.isEmpty())
        .map(word -> word.length() > 3 && word.endsWith("s") ? withoutLast(word) : word)
        .sorted()
        .toList();
  }

  private static String withoutLast(String word) {
    return word.substring(0, word.length() - 1);
  }
}
