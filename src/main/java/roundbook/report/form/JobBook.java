package roundbook.report.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Job;
import roundbook.job.Price;
import roundbook.job.Price.Basis;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.PageSetup.Paper;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Rule.Advice;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.page.TextHeight;
import roundbook.problem.Phrase;
import roundbook.problem.words.Sentences;
import roundbook.units.LengthUnit;

/**
 * The job workbook that a builder fills in: job, walls, logs, stems, prices, openings, pins, other
 * logs.
 *
 * <p>Every sheet has its headings in the first row. Cells for lengths take text, so that a
 * spreadsheet makes no date of a fraction. On the sheet Job a value left blank takes the default
 * beside it.
 *
 * <pre>{@code
 * Name           Value   Unit   Meaning                            If left blank
 * Log_thickness  6       in     Sawn or hewn thickness of the logs 6
 * }</pre>
 */
public final class JobBook {
  /** Rows for partitions and the walls of a second pen. */
  /** Width of the column that says what a setting means, in characters. */
  private static final double MEANING_WIDTH = 62;

  private static final int MORE_WALLS = 8;

  private static final int BLANK_LOGS = 120;
  private static final int BLANK_PLACES = 20;
  private static final int BLANK_PRICES = 8;
  private static final int BLANK_STEMS = 40;
  private static final int STATIONS = 16;

  /** Its headings are distances and a few words that are read in English. */
  private static final String STEMS = "Stems";

  private static final Optional<Price> NO_PRICE = Optional.empty();
  private static final String WALL_NAMES = "'Walls'!$A$2:$A$13";

  private static final Pattern UNIT = Pattern.compile("(.*?)( \\(.*\\))?");

  private final LengthUnit unit;
  private final JobFilling example;
  private final Sentences words;

  private JobBook(LengthUnit unit, JobFilling example, Sentences words) {
    this.unit = unit;
    this.example = example;
    this.words = words;
  }

  /** Returns a job workbook without values for a job in inches, millimetres or centimetres. */
  public static Book blank(LengthUnit unit) {
    return new JobBook(unit, JobExample.none(unit), Sentences.english()).book();
  }

  /** Returns a job workbook filled with an invented job, to try the program with. */
  public static Book example(LengthUnit unit) {
    return new JobBook(unit, JobExample.cabin(unit), Sentences.english()).book();
  }

  /**
   * Returns the sheets of a job that has no log yet, with an empty tally to fill in; headings and
   * meanings in the job's language, the sheets under the names by which they are read.
   */
  public static List<Sheet> filled(Job job) {
    Sentences words = Sentences.of(job.rules().text(Setting.LANGUAGE));
    return new JobBook(job.rules().unit(), new JobValues(job), words).sheets();
  }

  private Book book() {
    return Book.of(Book.Properties.titled("Job workbook"), sheets());
  }

  private List<Sheet> sheets() {
    return List.of(job(), walls(), logs(), stems(), prices(), openings(), pins(), others());
  }

  private SheetBuilder sheet(String name, double... widths) {
    Paper paper = unit.metric() ? Paper.A4 : Paper.LETTER;
    PageSetup page =
        PageSetup.of(PageKind.TABLE, paper)
            .lying()
            .header(name, "", "")
            .footer("", "", "{page}/{pages}");
    return new SheetBuilder(name, page)
        .id(name.toLowerCase(Locale.ROOT))
        .widths(widths)
        .freeze(1, 1)
        .printTitles(1, 1);
  }

  private Sheet job() {
    SheetBuilder sheet = sheet("Job", 21, 26, 8, MEANING_WIDTH, 16);
    double line = TextHeight.of("", Role.BODY, MEANING_WIDTH);
    head(sheet, "Name", "Value", "Unit", "Meaning", "If left blank");
    for (Setting setting : Setting.values()) {
      String meaning = setting.meaning().in(words);
      double height = TextHeight.of(meaning, Role.BODY, MEANING_WIDTH);
      sheet.nextRow();
      if (height > line) {
        sheet.height(height);
      }
      boolean length = setting.kind() == SettingKind.LENGTH;
      sheet
          .add(Cell.text(setting.label()).role(Role.BODY_BOLD))
          .add(value(setting).named(setting.label()))
          .add(Cell.text(length ? unit.symbol() : "").role(Role.BODY_CENTRE))
          .add(Cell.text(meaning))
          .add(Cell.text(standard(setting)).role(Role.BODY_CENTRE));
      check(sheet, setting);
    }
    return sheet.build();
  }

  private Cell value(Setting setting) {
    return Cell.text(example.setting(setting)).role(Role.TYPED_IN_TEXT);
  }

  private String standard(Setting setting) {
    String text = setting.standard(unit.metric());
    boolean tenth = setting.kind() == SettingKind.LENGTH && unit == LengthUnit.CENTIMETRE;
    return tenth && !text.isEmpty()
        ? new java.math.BigDecimal(text).movePointLeft(1).stripTrailingZeros().toPlainString()
        : text;
  }

  private static void check(SheetBuilder sheet, Setting setting) {
    Area cell = Area.cell(sheet.row(), 2);
    if (setting.kind() == SettingKind.CHOICE) {
      String error = "Choose one of: " + String.join(", ", setting.choices());
      sheet.rule(new Rule.OneOf(cell, setting.choices(), Advice.refusing(setting.label(), error)));
    }
  }

  private Sheet walls() {
    SheetBuilder sheet = sheet("Walls", 10, 22, 12, 16, 50, 12, 16, 8);
    head(
        sheet,
        "Wall",
        "Outside length",
        "Laid first",
        "Thickness",
        "Remarks",
        "Between",
        "At",
        "Pen");
    rows(sheet, example.walls(), MORE_WALLS + example.walls().size());
    return sheet
        .rule(
            new Rule.OneOf(
                Area.cell(2, 3).sized(MORE_WALLS + example.walls().size(), 1),
                List.of("x"),
                advice("Laid first", "x: laid first in every round. Blank: as Laid_first says.")))
        .build();
  }

  private Sheet logs() {
    SheetBuilder sheet = sheet("Logs", 9, 13, 10, 10, 10, 14, 14, 14, 9, 10, 10, 8, 8, 7, 36);
    String small = " (" + unit.symbol() + ")";
    String large = unit.metric() ? small : " (ft)";
    head(
        sheet,
        "Log",
        "Length" + large,
        "Butt" + small,
        "Mid" + small,
        "Tip" + small,
        "Mid at" + large,
        "Butt log or upper log",
        "Species",
        "Bark",
        "Sweep" + small,
        "Keep for",
        "Wall",
        "Round",
        "Skip",
        "Remarks");
    rows(sheet, example.logs(), Math.max(BLANK_LOGS, example.logs().size()));
    choose(sheet, 7, "Butt or upper log", "butt log", "upper log");
    choose(sheet, 9, "Bark", "over", "off");
    choose(sheet, 11, "Keep for", "any", "sill", "plate", "header", "spare");
    choose(sheet, 14, "Skip", "x");
    return sheet.rule(wallOf(column(sheet, 12))).build();
  }

  /** Returns the felled stems, a column of diameters for each distance from the butt. */
  private Sheet stems() {
    double[] widths = new double[8 + STATIONS];
    Arrays.fill(widths, 7.5);
    widths[widths.length - 1] = 24;
    SheetBuilder sheet = sheet(STEMS, widths);
    String small = " (" + unit.symbol() + ")";
    String large = unit.metric() ? small : " (ft)";
    List<String> headings = new ArrayList<>(List.of("Stem", "Species", "Length" + large, "Bark"));
    for (int at = 0; at < STATIONS; at++) {
      headings.add(station(at));
    }
    headings.addAll(List.of("Bad from" + large, "Bad to" + large, "Keep for", "Remarks"));
    head(sheet, headings.toArray(String[]::new));
    rows(sheet, List.of(), BLANK_STEMS);
    choose(sheet, 4, "Bark", "over", "off");
    return sheet.build();
  }

  /** Returns the heading of a station: 0, 1, 2 and 4 ft and every 4 ft, or 30, 60, 120 cm … */
  private String station(int number) {
    int steps = number < 3 ? number : 4 * (number - 2);
    return unit.metric() ? "at " + 30 * steps + " cm" : steps + " ft";
  }

  /**
   * Returns what yards ask for logs, a way of selling a row; the prices have names of their own.
   */
  private Sheet prices() {
    SheetBuilder sheet = sheet("Prices", 26, 12, 14, 16, 50);
    head(sheet, "Basis", "Price", "For lines", "Delivery a load", "Remarks");
    List<Price> prices = example.prices();
    for (int number = 1; number <= Math.max(BLANK_PRICES, prices.size()); number++) {
      sheet.nextRow();
      price(
          sheet, number, number <= prices.size() ? Optional.of(prices.get(number - 1)) : NO_PRICE);
    }
    String[] bases = Stream.of(Basis.values()).map(Basis::words).toArray(String[]::new);
    choose(sheet, 1, "Basis", bases);
    return sheet.build();
  }

  private static void price(SheetBuilder sheet, int number, Optional<Price> price) {
    String lines =
        price.stream()
            .flatMap(each -> each.lines().stream().sorted())
            .map(String::valueOf)
            .collect(Collectors.joining(", "));
    sheet
        .add(text(price.map(each -> each.basis().words()).orElse("")))
        .add(money(price.map(Price::price)).named(Book.nameOf("Price", number)))
        .add(text(lines))
        .add(money(price.flatMap(Price::delivery)).named(Book.nameOf("Delivery", number)))
        .add(text(""));
  }

  private static Cell text(String text) {
    return text.isEmpty()
        ? Cell.blank(Role.TYPED_IN_TEXT)
        : Cell.text(text).role(Role.TYPED_IN_TEXT);
  }

  private static Cell money(Optional<BigDecimal> money) {
    return money
        .map(each -> Cell.number(each.doubleValue()).role(Role.TYPED_IN))
        .orElseGet(() -> Cell.blank(Role.TYPED_IN))
        .format(Cell.Format.GENERAL);
  }

  private Sheet openings() {
    SheetBuilder sheet = sheet("Openings", 18, 8, 18, 12, 12, 12, 20, 16, 32);
    String small = " (" + unit.symbol() + ")";
    head(
        sheet,
        "Name",
        "Wall",
        "From left corner, as seen from outside" + small,
        "Width" + small,
        "Sill height" + small,
        "Head height" + small,
        "Cut after stacking or short logs",
        "Leaf, width x height" + small,
        "Remarks");
    rows(sheet, example.openings(), BLANK_PLACES);
    choose(sheet, 7, "How it is made", "cut after stacking", "short logs");
    return sheet.rule(wallOf(column(sheet, 2))).build();
  }

  private Sheet pins() {
    SheetBuilder sheet = sheet("Pins", 9, 9, 12, 10, 60);
    head(sheet, "Round", "Wall", "Log", "Butt at", "Why");
    rows(sheet, example.pins(), BLANK_PLACES);
    return sheet.rule(wallOf(column(sheet, 2))).build();
  }

  /** Returns what is wanted for other places than the walls, a kind a row. */
  private Sheet others() {
    SheetBuilder sheet = sheet("Other_logs", 18, 9, 13, 15, 15, 15, 50);
    String small = " (" + unit.symbol() + ")";
    String large = unit.metric() ? small : " (ft)";
    head(
        sheet,
        "For",
        "Count",
        "Length" + large,
        "Mid at least" + small,
        "Tip at least" + small,
        "Sweep at most" + small,
        "Remarks");
    rows(sheet, example.others(), Math.max(BLANK_PLACES, example.others().size()));
    return sheet.build();
  }

  private void head(SheetBuilder sheet, String... headings) {
    sheet.row(1).height(34);
    for (String heading : headings) {
      Matcher parts = UNIT.matcher(heading);
      boolean known = parts.matches() && !sheet.name().equals(STEMS);
      String text =
          known ? inWords(parts.group(1)) + Objects.toString(parts.group(2), "") : heading;
      sheet.add(Cell.text(text).role(Role.COLUMN_HEAD));
    }
  }

  private String inWords(String heading) {
    String key = heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
    return Phrase.of("form.head." + key).in(words);
  }

  private static void rows(SheetBuilder sheet, List<List<String>> rows, int count) {
    int wide = sheet.width();
    for (int index = 0; index < count; index++) {
      sheet.nextRow();
      for (int column = 0; column < wide; column++) {
        boolean filled = index < rows.size();
        sheet.add(text(filled ? rows.get(index).get(column) : ""));
      }
    }
  }

  private static Area column(SheetBuilder sheet, int column) {
    return new Area(2, column, sheet.row(), column);
  }

  private static void choose(SheetBuilder sheet, int column, String title, String... choices) {
    String error = "Choose one of: " + String.join(", ", choices) + ", or leave it blank.";
    sheet.rule(
        new Rule.OneOf(column(sheet, column), List.of(choices), Advice.refusing(title, error)));
  }

  private static Rule wallOf(Area area) {
    String error = "Choose a wall of the sheet Walls, or leave it blank.";
    return new Rule.OneOfCells(area, WALL_NAMES, Advice.asking("Wall", error));
  }

  private static Advice advice(String title, String text) {
    return Advice.refusing(title, text).prompt(text);
  }
}
