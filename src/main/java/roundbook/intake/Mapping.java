package roundbook.intake;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import roundbook.heading.Vocabulary;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * What the user says of a tally's columns where their headings do not.
 *
 * <p>Given by {@code --set} or by rows of the Job sheet: {@code Length_unit}, {@code
 * Diameter_unit}, and for any column {@code Column_butt}, {@code Column_mid}, {@code Column_tip},
 * {@code Column_log} and so on with the heading as it stands in the tally.
 *
 * @param columns what columns mean, by heading in small letters
 * @param length the unit of bare lengths; empty when not told
 * @param diameter the unit of bare diameters; empty when not told
 * @param vocabulary the words of headings
 */
record Mapping(
    Map<String, Field> columns,
    Optional<LengthUnit> length,
    Optional<LengthUnit> diameter,
    Vocabulary vocabulary) {

  private static final String COLUMN = "column_";
  private static final String LENGTH_UNIT = "length_unit";
  private static final String DIAMETER_UNIT = "diameter_unit";

  /** Collects what the options and the Job sheet say; options win. */
  static Mapping of(Asked asked, Optional<Table> job) {
    Map<String, String> told = new LinkedHashMap<>();
    job.ifPresent(table -> table.rows().forEach(row -> addRow(told, row)));
    asked.settings().forEach((label, value) -> told.put(plain(label), value));
    Map<String, Field> columns = new HashMap<>();
    told.forEach((label, value) -> addColumn(columns, label, value));
    return new Mapping(
        Map.copyOf(columns),
        asked.lengthUnit().or(() -> unit(told.get(LENGTH_UNIT))),
        asked.diameterUnit().or(() -> unit(told.get(DIAMETER_UNIT))),
        Vocabulary.with(asked.words()));
  }

  /** Returns whether a label says something of a tally's columns. */
  static boolean isLabel(String label) {
    String plain = plain(label);
    return plain.equals(LENGTH_UNIT)
        || plain.equals(DIAMETER_UNIT)
        || plain.startsWith(COLUMN) && Field.named(plain.substring(COLUMN.length())).isPresent();
  }

  /** Returns what the user says that a heading means; empty when nothing. */
  Optional<Field> field(String heading) {
    return Optional.ofNullable(columns.get(heading.strip().toLowerCase(Locale.ROOT)));
  }

  private static void addRow(Map<String, String> told, Row row) {
    if (isLabel(row.cell(1).text()) && !row.cell(2).isBlank()) {
      told.put(plain(row.cell(1).text()), row.cell(2).text());
    }
  }

  private static void addColumn(Map<String, Field> columns, String label, String value) {
    if (label.startsWith(COLUMN)) {
      Field.named(label.substring(COLUMN.length()))
          .ifPresent(field -> columns.put(value.strip().toLowerCase(Locale.ROOT), field));
    }
  }

  private static Optional<LengthUnit> unit(String word) {
    return word == null ? Optional.empty() : LengthReader.unitOf(word);
  }

  private static String plain(String label) {
    return label.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
  }
}
