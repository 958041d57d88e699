package roundbook.sheet.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import roundbook.page.Book;
import roundbook.problem.Problem;
import roundbook.sheet.style.CellStyles;
import roundbook.sheet.style.ChangingLooks;
import roundbook.sheet.style.StyleTemplate;

/** What the writers of one workbook share while it grows. */
final class Writing {
  private final XSSFWorkbook workbook;
  private final Book book;
  private final StyleTemplate template;
  private final CellStyles styles;
  private final ChangingLooks changingLooks;
  private final Map<String, byte[]> rows = new HashMap<>();
  private final Map<String, String> names = new TreeMap<>();
  private final List<Problem> problems = new ArrayList<>();

  Writing(XSSFWorkbook workbook, Book book, StyleTemplate template) {
    this.workbook = workbook;
    this.book = book;
    this.template = template;
    styles = new CellStyles(workbook, template);
    changingLooks = new ChangingLooks(workbook, template);
  }

  XSSFWorkbook workbook() {
    return workbook;
  }

  Book book() {
    return book;
  }

  StyleTemplate template() {
    return template;
  }

  CellStyles styles() {
    return styles;
  }

  ChangingLooks changingLooks() {
    return changingLooks;
  }

  /** Keeps the rows of the sheet that will stand in an entry of the file. */
  void rows(String entry, byte[] written) {
    rows.put(entry, written);
  }

  Map<String, byte[]> rows() {
    return rows;
  }

  void problem(Problem problem) {
    problems.add(problem);
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }

  void name(String name, String formula) {
    names.put(name, formula);
  }

  /** Writes the names that have been collected, in the order of the alphabet. */
  void defineNames() {
    names.putAll(book.names());
    names.forEach(
        (name, formula) -> {
          XSSFName defined = workbook.createName();
          defined.setNameName(name);
          defined.setRefersToFormula(formula);
        });
  }
}
