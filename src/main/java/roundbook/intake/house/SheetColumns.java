package roundbook.intake.house;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * The columns of a sheet of the job workbook, by the first words of their headings.
 *
 * @param table the sheet
 * @param columns column numbers by heading, in small letters
 */
record SheetColumns(Table table, Map<String, Integer> columns) {
  /** German headings of the job workbook, one that another begins with after it. */
  private static final Map<String, String> GERMAN = new LinkedHashMap<>();

  static {
    String[] pairs = {
      "wand", "wall",
      "außenlänge", "outside length",
      "zuerst gelegt", "laid first",
      "dicke", "thickness",
      "bemerkungen", "remarks",
      "zwischen", "between",
      "bei", "at",
      "bau", "pen",
      "grundlage", "basis",
      "preis", "price",
      "für zeilen", "for lines",
      "für", "for",
      "anfuhr", "delivery",
      "kranz", "round",
      "stamm", "log",
      "stock bei", "butt at",
      "warum", "why",
      "ab linker ecke", "from left corner",
      "breite", "width",
      "höhe der brüstung", "sill height",
      "höhe des sturzes", "head height",
      "danach geschnitten", "cut after stacking",
      "blatt", "leaf",
      "anzahl", "count",
      "länge", "length",
      "mitte mindestens", "mid at least",
      "zopf mindestens", "tip at least",
      "krümmung höchstens", "sweep at most"
    };
    for (int at = 0; at < pairs.length; at += 2) {
      GERMAN.put(pairs[at], pairs[at + 1]);
    }
  }

  /** Takes the sheet's first row as its headings. */
  static SheetColumns of(Table table) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    if (!table.rows().isEmpty()) {
      for (Cell cell : table.rows().get(0).filled()) {
        String text = cell.text().toLowerCase(Locale.ROOT);
        columns.putIfAbsent(english(text), cell.column());
      }
    }
    return new SheetColumns(table, columns);
  }

  /** Returns what a German heading stands for, with what stands behind it; any other as it is. */
  private static String english(String text) {
    return GERMAN.entrySet().stream()
        .filter(each -> text.startsWith(each.getKey()))
        .map(each -> each.getValue() + text.substring(each.getKey().length()))
        .findFirst()
        .orElse(text);
  }

  /** Returns the rows under the headings. */
  List<Row> below() {
    return table.rows().stream().skip(1).toList();
  }

  /** Returns the column whose heading begins so; 0 when there is none. */
  int column(String heading) {
    return columns.entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(heading))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(0);
  }

  /** Returns a cell's text; empty where there is none. */
  String text(Row row, String heading) {
    int column = column(heading);
    return column == 0 ? "" : row.cell(column).text();
  }

  /** Returns a cell as a length; says so where it is none or may be read in two ways. */
  Optional<Length> length(Row row, String heading, LengthUnit unit, Problems problems) {
    int column = column(heading);
    Optional<Length> length = table.length(row, column, unit);
    if (length.isEmpty()) {
      problems.add(
          Problem.of(ProblemCode.BAD_NUMBER, "length", table.at(row, column))
              .with("heading", heading)
              .with("text", row.cell(column).text())
              .found(row.cell(column).text()));
    }
    return length;
  }
}
