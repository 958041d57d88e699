package roundbook.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.function.FunctionMetadataRegistry;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Finds formulas that not every spreadsheet of 2010 or later can read.
 *
 * <p>A function passes if it is in POI's table of the functions of 2003 or among the five of 2007;
 * those that depend on the clock or on chance do not.
 */
public final class FormulaRules {
  private static final Set<String> OF_2007 =
      Set.of("IFERROR", "SUMIFS", "COUNTIFS", "AVERAGEIF", "AVERAGEIFS");
  private static final Set<String> REFUSED =
      Set.of("NOW", "TODAY", "RAND", "INDIRECT", "INFO", "CELL", "HYPERLINK");

  private FormulaRules() {}

  /** Returns one line for each formula of a workbook that cannot be parsed or is not allowed. */
  public static List<String> broken(Path book) throws IOException {
    List<String> broken = new ArrayList<>();
    try (InputStream in = Files.newInputStream(book);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFEvaluationWorkbook parsing = XSSFEvaluationWorkbook.create(workbook);
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              check(cell, parsing, broken);
            }
          }
        }
      }
    }
    return broken;
  }

  /** Returns the functions of a formula that are not allowed. */
  static List<String> refused(String formula, XSSFEvaluationWorkbook workbook, int sheet) {
    List<String> refused = new ArrayList<>();
    for (Ptg ptg : FormulaParser.parse(formula, workbook, FormulaType.CELL, sheet)) {
      String name = function(ptg);
      if (!name.isEmpty() && !isAllowed(name)) {
        refused.add(name);
      }
    }
    return refused;
  }

  private static void check(Cell cell, XSSFEvaluationWorkbook parsing, List<String> broken) {
    String formula = cell.getCellFormula();
    String place = cell.getSheet().getSheetName() + "!" + cell.getAddress() + ": " + formula;
    try {
      int sheet = cell.getSheet().getWorkbook().getSheetIndex(cell.getSheet());
      List<String> refused = refused(formula, parsing, sheet);
      if (!refused.isEmpty()) {
        broken.add(place + " uses " + refused);
      }
    } catch (FormulaParseException unreadable) {
      broken.add(place + " cannot be parsed: " + unreadable.getMessage());
    }
  }

  private static String function(Ptg ptg) {
    if (ptg instanceof NameXPxg foreign) {
      return foreign.getNameName();
    }
    boolean own = ptg instanceof AbstractFunctionPtg function && !function.isExternalFunction();
    return own ? ((AbstractFunctionPtg) ptg).getName() : "";
  }

  private static boolean isAllowed(String name) {
    boolean old = FunctionMetadataRegistry.getFunctionByName(name) != null;
    return !REFUSED.contains(name) && (old || OF_2007.contains(name));
  }
}
