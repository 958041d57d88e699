package roundbook.report.buy;

import java.util.ArrayList;
import java.util.List;
import roundbook.buying.Purchase;
import roundbook.page.Book;
import roundbook.page.Sheet;
import roundbook.report.form.JobBook;
import roundbook.report.frame.CrewContext;

/**
 * The workbook of an order: Start, Order, Cost, Loads, Trees, then the job with an empty tally.
 *
 * <p>Cost stands where there are prices, Loads where a trailer is named, Trees where their height
 * is.
 */
public final class OrderBook {
  private OrderBook() {}

  /**
   * Returns the workbook.
   *
   * @param context the job without a plan
   * @param purchase what is ordered for it
   */
  public static Book of(CrewContext context, Purchase purchase) {
    BuyCells cells = new BuyCells(context, purchase);
    List<Sheet> told = new ArrayList<>();
    told.add(OrderLinesSheet.of(cells));
    if (!purchase.cost().lines().isEmpty()) {
      told.add(new CostSheet(cells).sheet());
    }
    purchase.loads().ifPresent(loads -> told.add(LoadsSheet.of(cells, loads)));
    purchase.trees().ifPresent(trees -> told.add(TreesSheet.of(cells, trees)));
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(OrderStart.of(cells, told));
    sheets.addAll(told);
    sheets.addAll(JobBook.filled(context.plan().job()));
    return Book.of(
        Book.Properties.titled(context.jobName() + " - " + context.revision())
            .with(Book.INPUT_PROPERTY, context.issue().input()),
        sheets);
  }
}
