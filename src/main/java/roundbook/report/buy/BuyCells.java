package roundbook.report.buy;

import java.math.BigDecimal;
import roundbook.buying.Line;
import roundbook.buying.Purchase;
import roundbook.job.Setting;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.Role;
import roundbook.plan.PiecePlan.Weight;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.units.Bulk;
import roundbook.units.Length;

/**
 * What every sheet of an order is made from, and its cells.
 *
 * @param context the job's context
 * @param purchase what is ordered
 * @param cells cells in the unit and the words of the job
 */
record BuyCells(CrewContext context, Purchase purchase, Cells cells) {
  private static final double CUBIC_FOOT = 1728;

  BuyCells(CrewContext context, Purchase purchase) {
    this(context, purchase, new Cells(context));
  }

  boolean metric() {
    return context.rules().metric();
  }

  Bulk bulk() {
    return new Bulk(metric());
  }

  /** Returns a text of the workbook's language. */
  String text(String key, Object... values) {
    return context.text(key, values);
  }

  /** Returns a volume with one decimal in cubic feet, or two in cubic metres. */
  Cell volume(double cubicFeet) {
    return Cell.number(bulk().volume(cubicFeet * CUBIC_FOOT))
        .role(Role.BODY_CENTRE)
        .format(metric() ? Format.DECIMAL_2 : Format.DECIMAL_1);
  }

  Cell weight(double pounds) {
    return cells.weight(new Weight(pounds, Length.ZERO)).role(Role.BODY_CENTRE);
  }

  /** Returns a weight in whole units, with its unit, as text. */
  String weightText(double pounds) {
    long whole = Math.round(bulk().weight(pounds));
    return whole + (metric() ? " kg" : " lb");
  }

  /** Returns the lines whose logs ride on no load, such as {@code 1, 3}. */
  String unhauled() {
    return String.join(", ", purchase.unhauled().stream().map(String::valueOf).toList());
  }

  /** Returns the word for which log of the tree a line wants. */
  String from(Line line) {
    return text("buy.from." + line.from().word());
  }

  /** Returns money as text, with the word for it that the builder typed. */
  String money(BigDecimal money) {
    String word = context.rules().text(Setting.CURRENCY).strip();
    String number = context.words().number(money.toPlainString());
    return word.isEmpty() ? number : number + " " + word;
  }
}
