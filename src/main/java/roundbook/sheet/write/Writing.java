package roundbook.sheet.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundbook.page.Book;
import roundbook.problem.Problem;
import roundbook.sheet.style.StyleTemplate;

/** What the writers of one workbook share while it grows. */
final class Writing {
  private final StyleTemplate template;
  private final Parts parts = new Parts();
  private final CellStyles styles;
  private final DrawingWriter drawings;
  private final Xml ofSheets = new Xml();
  private final Map<String, String> names;
  private final List<Problem> problems = new ArrayList<>();

  Writing(Book book, StyleTemplate template) {
    this.template = template;
    styles = new CellStyles(template);
    drawings = new DrawingWriter(parts, book);
    names = new TreeMap<>(book.names());
  }

  StyleTemplate template() {
    return template;
  }

  Parts parts() {
    return parts;
  }

  CellStyles styles() {
    return styles;
  }

  DrawingWriter drawings() {
    return drawings;
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

  /** Gives a sheet a name that spreadsheets know, such as the area that prints. */
  void nameOfSheet(int index, String name, String formula) {
    ofSheets.open("definedName").with("name", "_xlnm." + name).with("localSheetId", index);
    Xml.escape(formula, false, ofSheets.inside());
    ofSheets.close();
  }

  /** Writes the names that have been collected, in the order of the alphabet. */
  void defineNames(Xml xml) {
    String first = ofSheets.toString();
    if (first.isEmpty() && names.isEmpty()) {
      return;
    }
    xml.open("definedNames").inside().append(first);
    names.forEach(
        (name, formula) -> {
          xml.open("definedName").with("name", name);
          Xml.escape(formula, false, xml.inside());
          xml.close();
        });
    xml.close();
  }
}
