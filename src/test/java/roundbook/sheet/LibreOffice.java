package roundbook.sheet;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A spreadsheet program outside the project that recalculates workbooks for tests.
 *
 * <p>It keeps stored values when it loads a file, so it is given a copy without them; what it then
 * shows is its own. Tests call {@link #assumePresent()} first and are skipped, with a message,
 * where the program is not installed.
 */
public final class LibreOffice {
  private static final double TOLERANCE = 1e-9;
  private static final int SECONDS = 180;

  /**
   * What a comparison found.
   *
   * @param formulas how many cells with formulas were compared
   * @param differences one line for each that differs
   */
  public record Comparison(int formulas, List<String> differences) {}

  private LibreOffice() {}

  /** Skips the test that calls this if the program cannot be run. */
  public static void assumePresent() {
    boolean present = false;
    for (String folder : System.getenv("PATH").split(java.io.File.pathSeparator)) {
      present |= Files.isExecutable(Path.of(folder, "soffice"));
    }
    assumeTrue(
        present, "SKIPPED: soffice (LibreOffice Calc) is not installed, nothing recalculated");
  }

  /** Returns the path of a copy that the program calculated and saved in the same folder. */
  public static Path recalculate(Path book) throws IOException, InterruptedException {
    return recalculate(book, Map.of());
  }

  /**
   * Returns the path of a copy that the program calculated after values were typed in.
   *
   * @param book the workbook, which stays as it is
   * @param typed numbers, texts and truths by defined name or by address such as {@code Logs!B3}
   */
  public static Path recalculate(Path book, Map<String, ?> typed)
      throws IOException, InterruptedException {
    return recalculated(List.of(book), typed).get(0);
  }

  /** Recalculates several workbooks of one folder in one start, which takes most of the time. */
  public static List<Path> recalculateAll(List<Path> books)
      throws IOException, InterruptedException {
    return recalculated(books, Map.of());
  }

  private static List<Path> recalculated(List<Path> books, Map<String, ?> typed)
      throws IOException, InterruptedException {
    Path beside = books.get(0).toAbsolutePath().getParent();
    Path folder = Files.createTempDirectory(beside, "recalculated");
    List<Path> bare = new ArrayList<>();
    for (int index = 0; index < books.size(); index++) {
      bare.add(folder.resolve(index + ".xlsx"));
      try (InputStream in = Files.newInputStream(books.get(index));
          XSSFWorkbook workbook = new XSSFWorkbook(in);
          OutputStream out = Files.newOutputStream(bare.get(index))) {
        typeInto(workbook, typed);
        workbook.write(out);
      }
    }
    return convert(bare, folder.resolve("saved"), "xlsx:Calc MS Excel 2007 XML", ".xlsx");
  }

  /** Returns the path of the workbook as it prints. */
  public static Path print(Path book) throws IOException, InterruptedException {
    return convert(List.of(book), book.resolveSibling("printed"), "pdf", ".pdf").get(0);
  }

  /** Compares every cell that has a formula in the first workbook with the second. */
  public static Comparison compare(Path stored, Path recalculated) throws IOException {
    return compare(stored, recalculated, TOLERANCE);
  }

  /** Compares likewise, numbers being the same within a part of their size, or of 1. */
  public static Comparison compare(Path stored, Path recalculated, double tolerance)
      throws IOException {
    return compare(stored, recalculated, tolerance, Set.of());
  }

  /**
   * Compares likewise two books that may have more or fewer rows above a sheet's formulas.
   *
   * @param inOrder the sheets of which the first formula is compared with the first, the second
   *     with the second and so on, which must stand in the same columns; of all others each is
   *     compared with what stands in the same cell
   */
  public static Comparison compare(
      Path stored, Path recalculated, double tolerance, Set<String> inOrder) throws IOException {
    List<String> differences = new ArrayList<>();
    int formulas = 0;
    try (XSSFWorkbook one = new XSSFWorkbook(Files.newInputStream(stored));
        XSSFWorkbook two = new XSSFWorkbook(Files.newInputStream(recalculated))) {
      for (Sheet sheet : one) {
        List<Cell> cells = formulas(sheet);
        Sheet other = two.getSheet(sheet.getSheetName());
        List<Object> values =
            inOrder.contains(sheet.getSheetName())
                ? valuesInOrder(cells, other)
                : cells.stream().map(cell -> value(other, cell)).toList();
        formulas += cells.size();
        for (int index = 0; index < cells.size(); index++) {
          Cell cell = cells.get(index);
          Object first = value(cell);
          Object second = values.get(index);
          if (!same(first, second, tolerance)) {
            String place = sheet.getSheetName() + "!" + cell.getAddress();
            differences.add(
                place + ": stored " + first + ", now " + second + " by " + cell.getCellFormula());
          }
        }
      }
    }
    return new Comparison(formulas, differences);
  }

  private static List<Object> valuesInOrder(List<Cell> cells, Sheet sheet) {
    List<Cell> others = formulas(sheet);
    if (!columns(cells).equals(columns(others))) {
      throw new AssertionError(
          sheet.getSheetName() + " has formulas in other columns: " + cells + ", now " + others);
    }
    return others.stream().map(LibreOffice::value).toList();
  }

  private static List<Integer> columns(List<Cell> cells) {
    return cells.stream().map(Cell::getColumnIndex).toList();
  }

  /** Returns the value of a named cell, or of an address such as {@code Logs!B3}. */
  public static Object value(Path book, String where) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book))) {
      return value(cell(workbook, where));
    }
  }

  private static List<Cell> formulas(Sheet sheet) {
    List<Cell> formulas = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.FORMULA) {
          formulas.add(cell);
        }
      }
    }
    return formulas;
  }

  /** Types values into a workbook, and takes every stored value from its formulas. */
  static void typeInto(Workbook workbook, Map<String, ?> typed) {
    typed.forEach((where, value) -> type(cell(workbook, where), value));
    for (Sheet sheet : workbook) {
      for (Cell cell : formulas(sheet)) {
        var raw = ((XSSFCell) cell).getCTCell();
        if (raw.isSetV()) {
          raw.unsetV();
        }
        if (raw.isSetT()) {
          raw.unsetT();
        }
      }
    }
  }

  private static Cell cell(Workbook workbook, String where) {
    var name = workbook.getName(where);
    String full = name == null ? where : name.getRefersToFormula();
    int mark = full.lastIndexOf('!');
    String sheet = full.substring(0, mark).replaceAll("^'|'$", "").replace("''", "'");
    CellReference at = new CellReference(full.substring(mark + 1));
    Row row = workbook.getSheet(sheet).getRow(at.getRow());
    return row.getCell(at.getCol(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  private static void type(Cell cell, Object value) {
    cell.setBlank();
    if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (value instanceof Boolean truth) {
      cell.setCellValue(truth);
    } else {
      cell.setCellValue(value.toString());
    }
  }

  private static Object value(Sheet sheet, Cell like) {
    Row row = sheet == null ? null : sheet.getRow(like.getRowIndex());
    Cell cell = row == null ? null : row.getCell(like.getColumnIndex());
    return cell == null ? "" : value(cell);
  }

  private static Object value(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> cell.getNumericCellValue();
      case BOOLEAN -> cell.getBooleanCellValue() ? 1.0 : 0.0;
      case ERROR -> "error " + cell.getErrorCellValue();
      case BLANK -> "";
      default -> cell.getRichStringCellValue().getString();
    };
  }

  private static boolean same(Object first, Object second, double tolerance) {
    if (first instanceof Double one && second instanceof Double two) {
      return Math.abs(one - two) <= tolerance * Math.max(1, Math.abs(one));
    }
    return first.equals(second);
  }

  private static List<Path> convert(List<Path> books, Path folder, String format, String ending)
      throws IOException, InterruptedException {
    Path beside = books.get(0).toAbsolutePath().getParent();
    Path profile = Files.createTempDirectory(beside, "profile");
    List<String> words = new ArrayList<>();
    words.addAll(List.of("soffice", "-env:UserInstallation=" + profile.toUri(), "--headless"));
    words.addAll(List.of("--convert-to", format, "--outdir", folder.toString()));
    books.forEach(book -> words.add(book.toString()));
    ProcessBuilder command = new ProcessBuilder(words);
    command.environment().put("LC_ALL", "C.UTF-8");
    Process process = command.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    boolean ended = process.waitFor(SECONDS, TimeUnit.SECONDS);
    List<Path> made =
        books.stream()
            .map(book -> book.getFileName().toString().replaceAll("\\.[^.]*$", "") + ending)
            .map(folder::resolve)
            .toList();
    if (!ended || !made.stream().allMatch(Files::exists)) {
      process.destroy();
      throw new IOException("soffice made not all of " + made + ": " + said);
    }
    return made;
  }
}
