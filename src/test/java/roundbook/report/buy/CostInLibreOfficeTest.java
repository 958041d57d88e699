package roundbook.report.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.buying.Purchase;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.OtherLog;
import roundbook.job.Price;
import roundbook.job.Price.Basis;
import roundbook.job.Setting;
import roundbook.page.Book;
import roundbook.plan.Jobs;
import roundbook.plan.Planner;
import roundbook.problem.CellRef;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.CrewContext.Issue;
import roundbook.sheet.LibraryFormulas;
import roundbook.sheet.LibreOffice;
import roundbook.sheet.LibreOffice.Comparison;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;
import roundbook.units.Length;

/** The sheet Cost worked again by programs outside: every sum agrees to the cent. */
class CostInLibreOfficeTest {
  private static final List<Price> PRICES =
      List.of(
          new Price(
              Basis.DOYLE,
              new BigDecimal("0.605"),
              Set.of(1, 2),
              Optional.of(new BigDecimal("87.35"))),
          new Price(Basis.TON, new BigDecimal("91.15"), Set.of(3), Optional.empty()),
          new Price(Basis.CUBIC_METRE, new BigDecimal("77.77"), Set.of(), Optional.empty()));

  @TempDir private Path folder;

  @Test
  @Tag("long")
  void costsAgreeToTheCent() throws IOException, InterruptedException {
    LibreOffice.assumePresent();
    Path book = written();
    Comparison same = LibreOffice.compare(book, LibreOffice.recalculate(book), 0.001);
    assertEquals(List.of(), same.differences());
    assertTrue(same.formulas() > 20, same.formulas() + " formulas");
  }

  /** Twice the price of the first line's basis is twice the cost, rounded once. */
  @Test
  void aChangedPriceChangesTheSum() throws IOException {
    Purchase purchase = purchase();
    Path book = written();
    Path changed = LibraryFormulas.recalculate(book, Map.of("Prices!B2", 1.21));
    BigDecimal before = purchase.cost().lines().get(0).cost();
    double now = (double) LibreOffice.value(changed, "Cost!F4");
    assertEquals(before.doubleValue() * 2, now, 0.011);
    Path same = LibraryFormulas.recalculate(book, Map.of());
    assertEquals(before.doubleValue(), (double) LibreOffice.value(same, "Cost!F4"), 1e-9);
  }

  private Path written() throws IOException {
    Book book = OrderBook.of(context(), purchase());
    Path file = folder.resolve("order.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      BookWriter.write(book, StyleTemplate.standard(), out);
    }
    return file;
  }

  private static CrewContext context() {
    Issue issue = new Issue(1, "house.xlsx", "test", false);
    return CrewContext.of(Planner.unplanned(job()), List.of(), issue);
  }

  private static Purchase purchase() {
    return Purchase.of(job()).value().orElseThrow();
  }

  private static Job job() {
    BuildRules rules =
        Jobs.rules(false)
            .with(Setting.ROUNDS, BigDecimal.valueOf(7), Origin.OPTION)
            .with(Setting.LOAD_MOST, BigDecimal.valueOf(10_000), Origin.OPTION);
    return new Job(
            rules,
            Jobs.building(Length.ofInches(240), Length.ofInches(192), rules.thickness()),
            List.of(),
            List.of(),
            List.of())
        .withPrices(PRICES)
        .withOthers(
            List.of(
                new OtherLog(
                    "purlin",
                    3,
                    Length.ofInches(290),
                    Length.ofInches(11),
                    Length.ZERO,
                    Optional.empty(),
                    "",
                    CellRef.ofFile(""))));
  }
}
