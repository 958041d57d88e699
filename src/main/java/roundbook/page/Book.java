package roundbook.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A whole workbook that is to be written, sheets in order.
 *
 * <p>The names of cells ({@link Cell#named}) and of the book are one set: every name occurs once,
 * upper and lower case being the same.
 *
 * @param properties what the file says about itself
 * @param sheets the sheets in the order of their tabs
 * @param names further defined names, each with its formula, such as {@code 'Log list'!$A$5:$A$60}
 */
public record Book(Properties properties, List<Sheet> sheets, SortedMap<String, String> names) {
  /** The custom property that marks a workbook written for a crew; its value is the version. */
  public static final String CREW_PROPERTY = "roundbook-crew";

  /** The custom property that holds the name of the file from which a workbook was first made. */
  public static final String INPUT_PROPERTY = "roundbook-input";

  private static final Pattern NAME = Pattern.compile("[\\p{L}_][\\p{L}\\p{Nd}_.]{0,254}");
  private static final Pattern NOT_IN_A_NAME = Pattern.compile("[^\\p{L}\\p{Nd}_.]");
  private static final Pattern LIKE_A_CELL =
      Pattern.compile("(?i)[a-z]{1,3}[0-9]+|r[0-9]*|c[0-9]*|r[0-9]*c[0-9]*|true|false");

  /**
   * Checks that no two sheets and no two names are the same and that links lead somewhere.
   *
   * @throws IllegalArgumentException if not; then the program is at fault
   */
  public Book {
    sheets = List.copyOf(sheets);
    names = Collections.unmodifiableSortedMap(new TreeMap<>(names));
    names.keySet().forEach(Book::checkedName);
    List<String> tabs = sheets.stream().map(Sheet::name).toList();
    requireDifferent("sheets", tabs);
    List<String> all = new ArrayList<>(names.keySet());
    sheets.forEach(sheet -> sheet.rows().values().forEach(row -> named(row.values(), tabs, all)));
    requireDifferent("names", all);
  }

  /**
   * What the file says about itself; nothing of it is ever taken from the machine.
   *
   * @param title the document's title
   * @param subject its subject
   * @param keywords words to find it by
   * @param description a sentence on it
   * @param custom further properties of this program's own, such as {@link #CREW_PROPERTY}
   */
  public record Properties(
      String title,
      String subject,
      String keywords,
      String description,
      SortedMap<String, String> custom) {
    /** Copies the map. */
    public Properties {
      custom = Collections.unmodifiableSortedMap(new TreeMap<>(custom));
    }

    /** Returns properties with a title only. */
    public static Properties titled(String title) {
      return new Properties(title, "", "", "", Collections.emptySortedMap());
    }

    /** Returns these properties with one more of the program's own. */
    public Properties with(String key, String value) {
      SortedMap<String, String> more = new TreeMap<>(custom);
      more.put(key, value);
      return new Properties(title, subject, keywords, description, more);
    }
  }

  /** Returns a book of sheets without further names. */
  public static Book of(Properties properties, List<Sheet> sheets) {
    return new Book(properties, sheets, Collections.emptySortedMap());
  }

  /** Returns this book with further defined names. */
  public Book names(Map<String, String> more) {
    SortedMap<String, String> all = new TreeMap<>(names);
    all.putAll(more);
    return new Book(properties, sheets, all);
  }

  /** Returns this book with one more property of the program's own. */
  public Book property(String key, String value) {
    return new Book(properties.with(key, value), sheets, names);
  }

  /** Returns this book with one more sheet at the end. */
  public Book plus(Sheet sheet) {
    List<Sheet> more = new ArrayList<>(sheets);
    more.add(sheet);
    return new Book(properties, more, names);
  }

  /**
   * Returns a defined name made of parts, such as {@code Measured_1_N}; what a name cannot have
   * becomes an underscore.
   */
  public static String nameOf(Object... parts) {
    String joined = Stream.of(parts).map(String::valueOf).collect(Collectors.joining("_"));
    String clean = NOT_IN_A_NAME.matcher(joined).replaceAll("_");
    String cut = clean.length() > 250 ? clean.substring(0, 250) : clean;
    return isName(cut) ? cut : "_" + cut;
  }

  /**
   * Returns whether spreadsheets accept a defined name: no spaces, and not like a cell's address.
   */
  public static boolean isName(String name) {
    return NAME.matcher(name).matches() && !LIKE_A_CELL.matcher(name).matches();
  }

  static String checkedName(String name) {
    if (!isName(name)) {
      throw new IllegalArgumentException("no defined name: " + name);
    }
    return name;
  }

  private static void requireDifferent(String what, List<String> words) {
    Set<String> seen = new HashSet<>();
    for (String word : words) {
      if (!seen.add(word.toLowerCase(Locale.ROOT))) {
        throw new IllegalArgumentException(what + " with the same name: " + word);
      }
    }
  }

  /** Collects the names of cells; what cells there are is gone through once, for they are many. */
  private static void named(Collection<Cell> cells, List<String> tabs, List<String> names) {
    for (Cell cell : cells) {
      if (!cell.name().isEmpty()) {
        names.add(cell.name());
      }
      if (!cell.link().isEmpty() && !tabs.contains(cell.link())) {
        throw new IllegalArgumentException("link to no sheet: " + cell.link());
      }
    }
  }
}
