package roundbook.sheet.write;

import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCfRule;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCfType;
import roundbook.page.Area;
import roundbook.page.Rule;

/** Writes the checks and the changing looks of one sheet. */
final class RuleWriter {
  private final XSSFSheet to;
  private final Writing writing;
  private final DataValidationHelper helper;
  private int priority;

  RuleWriter(XSSFSheet to, Writing writing) {
    this.to = to;
    this.writing = writing;
    helper = to.getDataValidationHelper();
  }

  void write(List<Rule> rules) {
    rules.forEach(this::write);
  }

  private void write(Rule rule) {
    if (rule instanceof Rule.OneOf list) {
      String[] choices = list.choices().toArray(String[]::new);
      check(rule, helper.createExplicitListConstraint(choices), list.advice());
    } else if (rule instanceof Rule.OneOfCells list) {
      check(rule, helper.createFormulaListConstraint(list.source()), list.advice());
    } else if (rule instanceof Rule.Between limits) {
      check(rule, between(limits), limits.advice());
    } else if (rule instanceof Rule.Holds holds) {
      check(rule, helper.createCustomConstraint(holds.formula()), holds.advice());
    } else if (rule instanceof Rule.LooksLike looks) {
      changeLooks(looks);
    }
  }

  private DataValidationConstraint between(Rule.Between limits) {
    return helper.createDecimalConstraint(
        OperatorType.BETWEEN, plain(limits.least()), plain(limits.most()));
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).toPlainString();
  }

  private void check(Rule rule, DataValidationConstraint constraint, Rule.Advice advice) {
    CellRangeAddressList cells = new CellRangeAddressList();
    cells.addCellRangeAddress(SheetWriter.range(rule.area()));
    DataValidation check = helper.createValidation(constraint, cells);
    check.setEmptyCellAllowed(true);
    check.setErrorStyle(
        advice.refuse() ? DataValidation.ErrorStyle.STOP : DataValidation.ErrorStyle.WARNING);
    check.createErrorBox(advice.title(), advice.error());
    check.setShowErrorBox(true);
    if (!advice.prompt().isEmpty()) {
      check.createPromptBox(advice.title(), advice.prompt());
      check.setShowPromptBox(true);
    }
    to.addValidationData(check);
  }

  private void changeLooks(Rule.LooksLike looks) {
    add(cells(looks.area()), looks.formula(), writing.changingLooks().of(looks.role()));
  }

  private CTConditionalFormatting cells(Area area) {
    CTConditionalFormatting formatting = to.getCTWorksheet().addNewConditionalFormatting();
    formatting.setSqref(List.of(area.toString()));
    return formatting;
  }

  private void add(CTConditionalFormatting formatting, String formula, int look) {
    CTCfRule rule = formatting.addNewCfRule();
    rule.setType(STCfType.EXPRESSION);
    rule.setDxfId(look);
    rule.setPriority(++priority);
    rule.addFormula(formula);
  }

  /**
   * Shows fractions without the padding of their format where they have a short form.
   *
   * <p>The format of sixteenths keeps room for a whole number and for two digits below the line, so
   * that 3 or 5/8 stands out of the middle; such numbers are shown by formats without that room.
   * Where a spreadsheet overlooks the rules the number is still right.
   */
  void shortenFractions(List<Area> fractions) {
    for (Area area : fractions) {
      String cell = Area.cell(area.top(), area.left()).toString();
      String eighths = "8*" + cell + "=INT(8*" + cell + ")";
      String small = "ABS(" + cell + ")<1";
      CTConditionalFormatting rules = cells(area);
      add(rules, cell + "=INT(" + cell + ")", writing.changingLooks().of("0"));
      add(rules, "AND(" + small + "," + eighths + ")", writing.changingLooks().of("?/?"));
      add(rules, eighths, writing.changingLooks().of("# ?/?"));
      add(rules, small, writing.changingLooks().of("?/??"));
    }
  }
}
