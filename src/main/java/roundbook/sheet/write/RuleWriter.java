package roundbook.sheet.write;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import roundbook.page.Area;
import roundbook.page.Rule;
import roundbook.page.Sheet;

/** Writes the changing looks and then the checks of one sheet. */
final class RuleWriter {
  private final Xml xml;
  private final CellStyles styles;
  private int priority;

  RuleWriter(Xml xml, CellStyles styles) {
    this.xml = xml;
    this.styles = styles;
  }

  void write(Sheet sheet) {
    List<Rule> checks = new ArrayList<>();
    for (Rule rule : sheet.rules()) {
      if (rule instanceof Rule.LooksLike looks) {
        begin(looks.area());
        change(looks.formula(), styles.changing(looks.role()));
        xml.close();
      } else {
        checks.add(rule);
      }
    }
    Fractions.of(sheet).forEach(this::shortenFractions);
    if (!checks.isEmpty()) {
      xml.open("dataValidations").with("count", checks.size());
      checks.forEach(this::check);
      xml.close();
    }
  }

  private void check(Rule rule) {
    if (rule instanceof Rule.OneOf list) {
      check(rule, "list", list.advice(), "\"" + String.join(",", list.choices()) + "\"");
    } else if (rule instanceof Rule.OneOfCells list) {
      check(rule, "list", list.advice(), list.source());
    } else if (rule instanceof Rule.Between limits) {
      check(rule, "decimal", limits.advice(), plain(limits.least()), plain(limits.most()));
    } else if (rule instanceof Rule.Holds holds) {
      check(rule, "custom", holds.advice(), holds.formula());
    }
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).toPlainString();
  }

  private void check(Rule rule, String type, Rule.Advice advice, String... formulas) {
    xml.open("dataValidation").with("type", type).with("sqref", rule.area());
    xml.with("allowBlank", true).with("errorStyle", advice.refuse() ? "stop" : "warning");
    xml.with("errorTitle", advice.title()).with("error", advice.error());
    xml.with("showErrorMessage", true);
    if (!advice.prompt().isEmpty()) {
      xml.with("promptTitle", advice.title()).with("prompt", advice.prompt());
      xml.with("showInputMessage", true);
    }
    for (int index = 0; index < formulas.length; index++) {
      xml.text("formula" + (index + 1), formulas[index]);
    }
    xml.close();
  }

  private void begin(Area area) {
    xml.open("conditionalFormatting").with("sqref", area);
  }

  private void change(String formula, int look) {
    xml.open("cfRule").with("type", "expression").with("dxfId", look);
    xml.with("priority", ++priority).text("formula", formula).close();
  }

  /**
   * Shows fractions without the padding of their format where they have a short form.
   *
   * <p>The format of sixteenths keeps room for a whole number and for two digits below the line, so
   * that 3 or 5/8 stands out of the middle; such numbers are shown by formats without that room.
   * Where a spreadsheet overlooks the rules the number is still right.
   */
  private void shortenFractions(Area area) {
    String cell = Area.cell(area.top(), area.left()).toString();
    String eighths = "8*" + cell + "=INT(8*" + cell + ")";
    String small = "ABS(" + cell + ")<1";
    begin(area);
    change(cell + "=INT(" + cell + ")", styles.changing("0"));
    change("AND(" + small + "," + eighths + ")", styles.changing("?/?"));
    change(eighths, styles.changing("# ?/?"));
    change(small, styles.changing("?/??"));
    xml.close();
  }
}
