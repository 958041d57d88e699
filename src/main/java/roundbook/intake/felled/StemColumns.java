package roundbook.intake.felled;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * The columns of a table of stems.
 *
 * @param head the row of headings
 * @param columns the column of each meaning
 * @param stations the column of each distance from the butt, as they stand from left to right
 * @param bad the pairs of columns of bad stretches
 * @param lengthUnit the unit that the heading of lengths names; empty where it names none
 * @param diameterUnit the unit that the headings of stations name for diameters; empty likewise
 */
record StemColumns(
    Row head,
    Map<Meaning, Integer> columns,
    List<At> stations,
    List<Pair> bad,
    Optional<LengthUnit> lengthUnit,
    Optional<LengthUnit> diameterUnit) {
  private static final int FEWEST = 3;
  private static final int HEAD_ROWS = 10;
  private static final Pattern STATION =
      Pattern.compile(
          "(?:(?:d|dia|diam|diameter|durchmesser|ø)\\.?\\s+)?(?:(?:at|bei|@)\\s*)?(\\d.*?)"
              + "(?:\\s*[(\\[]\\s*(.+?)\\s*[)\\]])?");
  private static final Pattern UNIT = Pattern.compile(".*[(\\[,]\\s*([^)\\]]+?)\\s*[)\\]]?");

  /** What a column may mean besides a diameter. */
  enum Meaning {
    /** The tag on the butt end. */
    TAG("stem|tree|tag|stem tag|stem no\\.?|stamm|baum|stamm-?nr\\.?|nr\\.?"),
    /** The length from end to end. */
    LENGTH("length|stem length|länge|stammlänge"),
    /** The species. */
    SPECIES("species|wood|holzart|baumart"),
    /** Over or off. */
    BARK("bark|rinde"),
    /** Where it begins to be sound. */
    CLEAR_FROM("clear from|gesund ab|gesund von"),
    /** Where it ceases to be sound. */
    CLEAR_TO("clear to|gesund bis"),
    /** The greatest bow. */
    SWEEP("sweep|bow|krümmung"),
    /** What its pieces are kept for. */
    KEEP("keep for|keep|vorbehalten für|für"),
    /** Whether to leave it out. */
    SKIP("skip|leave out|auslassen"),
    /** Free text. */
    REMARKS("remarks?|notes?|bemerkung(en)?|anmerkung(en)?"),
    /** Where a bad stretch begins. */
    BAD_FROM("bad from|schlecht (von|ab)|fehler (von|ab)"),
    /** Where a bad stretch ends. */
    BAD_TO("bad to|schlecht bis|fehler bis");

    private final Pattern words;

    Meaning(String words) {
      this.words = Pattern.compile("(?:" + words + ")(?:\\s*\\d+)?(?:\\s*[(\\[,].*)?");
    }
  }

  /**
   * A column of diameters.
   *
   * @param column its number
   * @param fromButt the distance from the butt; empty where the heading names no unit
   */
  record At(int column, Optional<Length> fromButt) {}

  /**
   * The two columns of a bad stretch.
   *
   * @param from the column of its beginning
   * @param to the column of its end
   */
  record Pair(int from, int to) {}

  /** Returns the columns of a table of stems; empty where it is none. */
  static Optional<StemColumns> of(Table table) {
    boolean named = table.sheet().toLowerCase(Locale.ROOT).matches("stems|stämme");
    return table.rows().stream()
        .limit(HEAD_ROWS)
        .map(row -> of(row, table.decimalComma()))
        .filter(each -> each.isOfStems(named))
        .findFirst();
  }

  private boolean isOfStems(boolean named) {
    boolean tagged = columns.containsKey(Meaning.TAG) && columns.containsKey(Meaning.LENGTH);
    long sure = stations.stream().filter(at -> at.fromButt().isPresent()).count();
    return tagged && (named || sure >= FEWEST);
  }

  private static StemColumns of(Row row, boolean decimalComma) {
    Map<Meaning, Integer> columns = new EnumMap<>(Meaning.class);
    List<At> stations = new ArrayList<>();
    TreeMap<Integer, Integer> froms = new TreeMap<>();
    List<Pair> bad = new ArrayList<>();
    Optional<LengthUnit> length = Optional.empty();
    Optional<LengthUnit> diameter = Optional.empty();
    for (Cell cell : row.filled()) {
      String text = cell.text().toLowerCase(Locale.ROOT).replace('_', ' ').strip();
      Optional<Meaning> meaning = meaning(text);
      Matcher station = STATION.matcher(text);
      if (meaning.isPresent()) {
        if (meaning.get() == Meaning.BAD_FROM) {
          froms.put(cell.column(), cell.column());
        } else if (meaning.get() == Meaning.BAD_TO && !froms.isEmpty()) {
          bad.add(new Pair(froms.pollFirstEntry().getKey(), cell.column()));
        }
        columns.putIfAbsent(meaning.get(), cell.column());
        length = meaning.get() == Meaning.LENGTH ? unit(text) : length;
      } else if (station.matches()) {
        stations.add(new At(cell.column(), distance(station.group(1), cell, decimalComma)));
        diameter = diameter.or(() -> unitOf(station.group(2)));
      }
    }
    return new StemColumns(row, columns, stations, bad, length, diameter);
  }

  private static Optional<Meaning> meaning(String text) {
    for (Meaning meaning : Meaning.values()) {
      if (meaning.words.matcher(text).matches()) {
        return Optional.of(meaning);
      }
    }
    return Optional.empty();
  }

  private static Optional<Length> distance(String text, Cell cell, boolean decimalComma) {
    Optional<LengthUnit> shown = LengthUnit.ofSymbol(cell.unit());
    return new LengthReader(shown.orElse(LengthUnit.INCH), decimalComma)
        .read(text)
        .filter(each -> each.unit().isPresent() || shown.isPresent() || each.length().isZero())
        .map(LengthReader.Reading::length);
  }

  private static Optional<LengthUnit> unit(String text) {
    Matcher matcher = UNIT.matcher(text);
    return matcher.matches() ? unitOf(matcher.group(1)) : Optional.empty();
  }

  private static Optional<LengthUnit> unitOf(String word) {
    return word == null ? Optional.empty() : LengthReader.unitOf(word);
  }

  /** Returns the column of a meaning; 0 where there is none. */
  int column(Meaning meaning) {
    return columns.getOrDefault(meaning, 0);
  }
}
