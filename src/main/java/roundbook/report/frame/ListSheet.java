package roundbook.report.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.PageSetup;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.page.TextHeight;

/**
 * Fills one sheet from the top down: title, headings, texts, tables.
 *
 * <p>The sheet has a grid of columns. A table's column takes one column of the grid unless {@link
 * #spans} says how many each takes. Rows grow with the text in them.
 */
public final class ListSheet {
  private static final double LEAST_HEIGHT = 16;
  private static final double TITLE_HEIGHT = 44;
  private static final double HEADING_HEIGHT = 27;
  private static final double HEAD_HEIGHT = 24;
  private static final double DOUBT = 0.15;

  /** The part of a page that is surely filled before the page turns by itself. */
  private static final double SURE = 0.98;

  /** The part of a page that a block too high for any page must find free where it begins. */
  private static final double BEGUN = 1.0 / 3;

  /** The part of a page over the last full one for which no other page is begun. */
  private static final double SQUEEZE = 0.15;

  /** The least scale at which a list is still read: letters of 11 points become 8. */
  private static final double LEAST_SCALE = 0.74;

  private final CrewContext context;
  private final SheetBuilder sheet;
  private final double[] widths;
  private final boolean fullSize;
  private final double pageHeight;
  private final double squeeze;
  private int[] spans;
  private int next = 1;
  private double used;
  private double turned;
  private double all;
  private boolean broken;
  private double repeated;
  private double last;
  private int printed;
  private final List<Double> block = new ArrayList<>();
  private final List<Integer> breaks = new ArrayList<>();
  private int blockTop = 1;
  private double usedBefore;
  private double turnedBefore;
  private int turns;
  private int turnsBefore;

  public ListSheet(CrewContext context, Tab tab, PageSetup page, double... widths) {
    this.context = context;
    this.widths = widths.clone();
    this.sheet = new SheetBuilder(tab.in(context.words()), page).id(tab.id()).widths(widths);
    this.fullSize = page.fit().isFullSize();
    Figure.Size columns = sheet.sizeOf(Area.cell(1, 1).sized(1, widths.length));
    double scale = page.scale(columns.wide());
    this.pageHeight = page.high() / scale;
    this.squeeze = Math.max(0, Math.min(SQUEEZE, scale / LEAST_SCALE - 1));
    this.spans = ones(widths.length);
  }

  /** Returns the widths of a grid of so many columns, each so many characters wide. */
  public static double[] grid(int columns, double characters) {
    double[] widths = new double[columns];
    Arrays.fill(widths, characters);
    return widths;
  }

  /** Writes the black bar: the title, a line beside it, the revision. */
  public ListSheet title(String title, String side) {
    int columns = widths.length;
    int last = columnsFor(10, true);
    int first = columnsFor(title.length() * 3.6 + 5, false);
    sheet.row(next);
    double wide = width(first, columns - last);
    high(Math.max(TITLE_HEIGHT, TextHeight.of(side, Role.TITLE_NOTE, Math.max(wide, 10))));
    sheet.addAcross(first, Cell.text(title).role(Role.TITLE));
    if (columns - first - last > 0) {
      sheet.addAcross(columns - first - last, Cell.text(side).role(Role.TITLE_NOTE));
    }
    sheet.addAcross(last, Cell.text(context.revision()).role(Role.REVISION));
    next++;
    return this;
  }

  /** Writes the usual title of a tab, with the job's name beside it. */
  public ListSheet title(Tab tab) {
    return title(context.text("title." + tab.id()), context.jobName());
  }

  /** Says how many grid columns each column of the next tables takes. */
  public ListSheet spans(int... columns) {
    if (Arrays.stream(columns).sum() > widths.length) {
      throw new IllegalArgumentException(sheet.name() + ": spans wider than the grid");
    }
    spans = columns.clone();
    return this;
  }

  /** Writes a heading over what follows, which stays with it on one page where it fits. */
  public ListSheet heading(String text) {
    block();
    across(Cell.text(text).role(Role.HEADING), HEADING_HEIGHT);
    return this;
  }

  /** Writes a text across the sheet, as high as it needs. */
  public ListSheet text(Role role, String text) {
    across(Cell.text(text).role(role), 0);
    return this;
  }

  /** Writes a table's headings; they repeat on each page when the sheet is one table. */
  public ListSheet head(String... headings) {
    List<Cell> cells =
        Arrays.stream(headings).map(text -> Cell.text(text).role(Role.COLUMN_HEAD)).toList();
    put(cells, HEAD_HEIGHT);
    return this;
  }

  /** Writes a table's headings by their key, as many as the bundle has for it. */
  public ListSheet headOf(String key, Object... values) {
    return head(context.words().lines(key, values).toArray(String[]::new));
  }

  /** Keeps the last row written in sight and repeats it on every page. */
  public ListSheet repeatHead() {
    repeated = last;
    sheet.freeze(next - 1, 0).printTitles(next - 1, next - 1);
    return this;
  }

  /** Keeps the last row written in sight. */
  public ListSheet keepHead() {
    sheet.freeze(next - 1, 0);
    return this;
  }

  /** Returns whether a row fits on this page, of a sheet whose pages are all begun here. */
  public boolean holds(List<Cell> cells) {
    return used + heightOf(cells, LEAST_HEIGHT) <= SURE * pageHeight;
  }

  /** Writes one row of a table. */
  public ListSheet row(Cell... cells) {
    return row(Arrays.asList(cells));
  }

  /** Writes one row of a table. */
  public ListSheet row(List<Cell> cells) {
    put(cells, LEAST_HEIGHT);
    return this;
  }

  /** Writes one row of a table, so many points high at least. */
  public ListSheet row(double least, List<Cell> cells) {
    put(cells, least);
    return this;
  }

  /** Writes rows of a table that belong together, on one page where they fit. */
  public ListSheet together(List<List<Cell>> rows) {
    block();
    rows.forEach(this::row);
    return this;
  }

  /** Adds so many narrow columns right of the grid, which hold nothing. */
  public ListSheet margin(int columns, double characters) {
    double[] all = Arrays.copyOf(widths, widths.length + columns);
    Arrays.fill(all, widths.length, all.length, characters);
    sheet.widths(all);
    return this;
  }

  /** Returns the row that is written next. */
  public int next() {
    return next;
  }

  /** Leaves rows free for a figure and returns the area of them, as wide as the grid. */
  public Area free(double points) {
    sheet.row(next);
    high(points);
    Area area = Area.cell(next, 1).sized(1, widths.length);
    next++;
    return area;
  }

  /** Begins a new page. */
  public ListSheet breakPage() {
    settle();
    sheet.breakAfter(next - 1);
    broken = true;
    used = repeated;
    turned = repeated;
    begin();
    return this;
  }

  /**
   * Begins a block: what is written up to the next block or heading stays on one page where it
   * fits. Its height is known when it ends; a new page is then begun before it where it must. Where
   * that would make the sheet take more pages than without, the sheet is scaled to fewer instead.
   */
  public ListSheet block() {
    settle();
    begin();
    return this;
  }

  private void begin() {
    blockTop = next;
    usedBefore = used;
    turnedBefore = turned;
    turnsBefore = turns;
    block.clear();
  }

  /** Begins a new page before the block that ends here, unless it fits on the one it began on. */
  private void settle() {
    double high = block.stream().mapToDouble(Double::doubleValue).sum();
    double needed = high > SURE * pageHeight - repeated ? BEGUN * pageHeight : high;
    if (printed > 0 || fullSize || hasRoom(needed)) {
      return;
    }
    breaks.add(blockTop - 1);
    used = repeated + high;
    turned = repeated;
    turns = turnsBefore + 1;
    block.forEach(this::turn);
  }

  /**
   * Returns whether so many points had room on the page on which the block begins.
   *
   * <p>Heights are known about: a page that is full to a little over may have turned by itself or
   * not, so a new one is begun; on one that has surely turned, some room is kept for the doubt.
   */
  private boolean hasRoom(double points) {
    if (usedBefore > (1 + DOUBT) * pageHeight) {
      return turnedBefore + DOUBT * pageHeight + points <= pageHeight;
    }
    return usedBefore <= repeated || usedBefore + points <= pageHeight;
  }

  /** Returns the sheet's builder for what is not a list. */
  public SheetBuilder sheet() {
    return sheet;
  }

  /** Says that what follows is for the screen only. */
  public ListSheet endPrint() {
    block();
    printed = next - 1;
    return this;
  }

  /** Returns the sheet; what prints is its columns, or all of it where drawings go on past them. */
  public Sheet build() {
    if (fullSize) {
      return sheet.build();
    }
    settle();
    int bottom = printed > 0 ? printed : Math.max(1, next - 1);
    if (broken || !breaks.isEmpty() && pages() > turns) {
      breaks.forEach(sheet::breakAfter);
    } else {
      sheet.fit(new PageSetup.Fit(1, pages()));
    }
    return sheet.printArea(new Area(1, 1, bottom, widths.length)).build();
  }

  private void across(Cell cell, double least) {
    String text = ((Cell.Text) cell.value()).text();
    double height = TextHeight.of(text, cell.role(), width(0, widths.length));
    sheet.row(next).addAcross(widths.length, cell);
    high(Math.max(least, height));
    next++;
  }

  private void put(List<Cell> cells, double least) {
    sheet.row(next);
    for (int index = 0; index < cells.size(); index++) {
      int span = span(index);
      if (span == 1) {
        sheet.add(cells.get(index));
      } else {
        sheet.addAcross(span, cells.get(index));
      }
    }
    high(heightOf(cells, least));
    next++;
  }

  private int span(int index) {
    return index < spans.length ? spans[index] : 1;
  }

  private double heightOf(List<Cell> cells, double least) {
    double height = least;
    int column = 0;
    for (int index = 0; index < cells.size() && column < widths.length; index++) {
      double wide = width(column, column + span(index));
      height = wide > 0 ? Math.max(height, heightOf(cells.get(index), wide)) : height;
      column += span(index);
    }
    return height;
  }

  private void high(double points) {
    sheet.height(points);
    used += points;
    all += printed > 0 ? 0 : points;
    turn(points);
    block.add(points);
    last = points;
  }

  /** Counts a row on the page that is being filled, or on the next one. */
  private void turn(double points) {
    boolean over = turned + points > pageHeight;
    turns += over && printed == 0 ? 1 : 0;
    turned = (over ? repeated : turned) + points;
  }

  /**
   * Returns on how many pages a sheet without breaks prints: as many as it fills, or one fewer
   * where the last would hold next to nothing.
   */
  private int pages() {
    double more = Math.max(0, all - pageHeight) / (pageHeight - repeated);
    return 1 + (int) Math.max(0, Math.ceil(more - squeeze));
  }

  private double width(int from, int to) {
    return IntStream.range(from, Math.min(to, widths.length)).mapToDouble(at -> widths[at]).sum();
  }

  private static double heightOf(Cell cell, double wide) {
    Cell.Value shown = cell.value() instanceof Cell.Formula made ? made.result() : cell.value();
    String text = shown instanceof Cell.Text words ? words.text() : "";
    return TextHeight.of(text, cell.role(), wide);
  }

  private int columnsFor(double characters, boolean fromRight) {
    double sum = 0;
    int count = 0;
    while (sum < characters && count < widths.length - 1) {
      sum += widths[fromRight ? widths.length - 1 - count : count];
      count++;
    }
    return count;
  }

  private static int[] ones(int count) {
    return IntStream.range(0, count).map(index -> 1).toArray();
  }
}
