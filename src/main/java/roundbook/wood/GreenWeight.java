package roundbook.wood;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What green wood of a species weighs, by published figures.
 *
 * <p>Source of the figures: US Forest Service, Forest Inventory and Analysis, green weights of the
 * National Volume Estimator Library. A tree's own wood differs by a tenth and more, so a weight is
 * an estimate.
 *
 * @param species the name in the table; for a name that stands for several, how many were averaged
 * @param poundsPerCubicFoot green weight of wood
 * @param exact whether the name was found as it stands, not by a stand-in
 */
public record GreenWeight(String species, double poundsPerCubicFoot, boolean exact) {
  private static final String TABLE = "/roundbook/wood/green-weight.txt";
  private static final List<GreenWeight> ALL = read();

  /** Names in other languages that tallies use, with the word of the table they mean. */
  private static final List<String[]> WORDS =
      List.of(
          new String[] {"fichte", "norway spruce"},
          new String[] {"gran", "norway spruce"},
          new String[] {"kuusi", "norway spruce"},
          new String[] {"épinette", "spruce"},
          new String[] {"épicéa", "norway spruce"},
          new String[] {"kiefer", "scots pine"},
          new String[] {"tall", "scots pine"},
          new String[] {"mänty", "scots pine"},
          new String[] {"pino", "pine"},
          new String[] {"pin", "pine"},
          new String[] {"mélèze", "larch"},
          new String[] {"lärche", "larch"},
          new String[] {"tanne", "fir"},
          new String[] {"eiche", "oak"},
          new String[] {"ek", "oak"},
          new String[] {"tammi", "oak"},
          new String[] {"abeto", "fir"});

  /**
   * Finds the green weight of a species as a tally names it.
   *
   * <p>A name of the table, in either word order, is exact. A word such as {@code pine} takes the
   * mean of all its species; an empty or unknown name the mean of all softwoods; both are
   * stand-ins.
   */
  public static GreenWeight of(String name) {
    String wanted = words(translated(name.strip().toLowerCase(Locale.ROOT)));
    for (GreenWeight each : ALL) {
      if (words(each.species.toLowerCase(Locale.ROOT)).equals(wanted)) {
        return each;
      }
    }
    List<GreenWeight> like =
        wanted.isEmpty()
            ? List.of()
            : ALL.stream()
                .filter(each -> containsAll(words(each.species.toLowerCase(Locale.ROOT)), wanted))
                .toList();
    return like.isEmpty() ? mean("softwood", softwoods()) : mean(name.strip(), like);
  }

  private static String translated(String name) {
    return WORDS.stream()
        .filter(pair -> pair[0].equals(name))
        .map(pair -> pair[1])
        .findFirst()
        .orElse(name);
  }

  private static List<GreenWeight> softwoods() {
    List<String> kinds = List.of("pine", "spruce", "fir", "cedar", "larch", "hemlock");
    return ALL.stream()
        .filter(each -> kinds.stream().anyMatch(each.species.toLowerCase(Locale.ROOT)::contains))
        .toList();
  }

  private static GreenWeight mean(String name, List<GreenWeight> like) {
    double sum = like.stream().mapToDouble(GreenWeight::poundsPerCubicFoot).sum();
    return new GreenWeight(name, sum / like.size(), false);
  }

  private static boolean containsAll(String words, String wanted) {
    return Arrays.asList(words.split(" ")).containsAll(Arrays.asList(wanted.split(" ")));
  }

  /** Sorts a name's words, so that {@code Pine, red} and {@code red pine} are one. */
  private static String words(String name) {
    String[] parts = name.replaceAll("[^\\p{L}]+", " ").strip().split(" ");
    Arrays.sort(parts);
    return String.join(" ", parts);
  }

  private static List<GreenWeight> read() {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                GreenWeight.class.getResourceAsStream(TABLE), StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#") && !line.startsWith("name;"))
          .map(line -> line.split(";"))
          .map(each -> new GreenWeight(each[0], Double.parseDouble(each[1]), true))
          .toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
