package roundbook.intake.house;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import roundbook.job.Price;
import roundbook.job.Price.Basis;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * Reads the sheet Prices: a way of selling a row.
 *
 * <pre>{@code
 * Basis          Price   For lines   Delivery a load   Remarks
 * bd ft Doyle    0.60    1-4         75                Hill yard, by phone
 * each           45
 * }</pre>
 *
 * <p>Currency signs beside a number are passed over. A price without a basis, or with a board foot
 * that names no rule, is refused: it cannot be worked with.
 */
public final class PricesReader {
  private static final BigDecimal MOST = BigDecimal.valueOf(10_000_000);
  private static final int LINES_MOST = 999;
  private static final String KNOWN =
      Arrays.stream(Basis.values()).map(Basis::words).collect(Collectors.joining(", "));

  private final SheetColumns columns;
  private final Problems problems;

  /** Takes the sheet. */
  public PricesReader(Table table, Problems problems) {
    this.columns = SheetColumns.of(table);
    this.problems = problems;
  }

  /** Returns the prices that can be used; says what is wrong with the others. */
  public List<Price> prices() {
    List<Price> prices = new ArrayList<>();
    if (!isHeaded()) {
      return prices;
    }
    for (Row row : columns.below()) {
      if (!columns.text(row, "basis").isEmpty() || !columns.text(row, "price").isEmpty()) {
        price(row).ifPresent(prices::add);
      }
    }
    return prices;
  }

  /** Asks for a heading that is missing over cells that are filled. */
  private boolean isHeaded() {
    for (String heading : List.of("basis", "price")) {
      if (columns.column(heading) == 0
          && columns.below().stream().anyMatch(each -> !each.isBlank())) {
        CellRef where = columns.table().at(columns.table().rows().get(0));
        problems.add(
            Problem.of(ProblemCode.BAD_PRICE, "no-heading", where).with("heading", heading));
        return false;
      }
    }
    return true;
  }

  private Optional<Price> price(Row row) {
    String words = columns.text(row, "basis");
    Optional<Basis> basis = Basis.of(words);
    if (basis.isEmpty()) {
      Problem said = bad(words.isEmpty() ? "no-basis" : "basis", row, "basis").found(words);
      problems.add(said.with("text", words).with("known", KNOWN));
      return Optional.empty();
    }
    Optional<BigDecimal> price = money(row, "price");
    Optional<Set<Integer>> lines = lines(row);
    boolean free = columns.text(row, "delivery").isEmpty();
    Optional<BigDecimal> delivery = free ? Optional.empty() : money(row, "delivery");
    if (price.isEmpty() || lines.isEmpty() || delivery.isEmpty() && !free) {
      return Optional.empty();
    }
    return Optional.of(new Price(basis.get(), price.get(), lines.get(), delivery));
  }

  private Optional<BigDecimal> money(Row row, String heading) {
    Cell cell = row.cell(columns.column(heading));
    String bare = cell.text().replaceAll("[^0-9.,-]", "");
    Optional<BigDecimal> money =
        cell.kind() == CellKind.NUMBER
            ? Optional.of(cell.number())
            : new LengthReader(LengthUnit.MILLIMETRE, columns.table().decimalComma()).number(bare);
    Optional<BigDecimal> usable =
        money.filter(each -> each.signum() >= 0 && each.compareTo(MOST) <= 0);
    boolean nothing =
        heading.equals("price") && usable.filter(each -> each.signum() == 0).isPresent();
    if (usable.isEmpty() || nothing) {
      String variant = nothing ? "nothing" : "money";
      problems.add(bad(variant, row, heading).with("text", cell.text()).found(cell.text()));
      return Optional.empty();
    }
    return usable;
  }

  /** Reads lines such as {@code 1, 3-5}; nothing typed is all of them. */
  private Optional<Set<Integer>> lines(Row row) {
    String text = columns.text(row, "for lines").strip();
    Set<Integer> lines = new TreeSet<>();
    for (String part : text.isEmpty() ? new String[0] : text.split("\\s*[,;]\\s*|\\s+")) {
      String[] ends = part.split("-");
      boolean known = part.matches("[1-9]\\d{0,2}(-[1-9]\\d{0,2})?");
      int last = known ? Integer.parseInt(ends[ends.length - 1]) : LINES_MOST + 1;
      if (!known || Integer.parseInt(ends[0]) > last) {
        problems.add(bad("lines", row, "for lines").with("text", text).found(text));
        return Optional.empty();
      }
      for (int line = Integer.parseInt(ends[0]); line <= last; line++) {
        lines.add(line);
      }
    }
    return Optional.of(lines);
  }

  private Problem bad(String variant, Row row, String heading) {
    int column = Math.max(1, columns.column(heading));
    return Problem.of(ProblemCode.BAD_PRICE, variant, columns.table().at(row, column));
  }
}
