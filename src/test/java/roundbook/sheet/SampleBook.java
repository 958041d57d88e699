package roundbook.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.Figure;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Fit;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.PageSetup.Paper;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.units.Length;

/** A small made-up book that uses everything a book can have. */
public final class SampleBook {
  public static final String ROUND = "Round 01";
  public static final String LISTS = "Wood's list";
  public static final byte[] PNG = png();

  private SampleBook() {}

  public static Book book() {
    Book.Properties properties =
        new Book.Properties("Cabin", "Crew workbook", "logs", "made up", new java.util.TreeMap<>())
            .with(Book.CREW_PROPERTY, "1");
    return Book.of(properties, List.of(round(), lists(), template(), hidden()))
        .names(Map.of("Gap_least", "0.5", "Tags", Area.of("A2:A4").on(LISTS)));
  }

  private static PageSetup site() {
    return PageSetup.of(PageKind.SITE, Paper.LETTER)
        .lying()
        .fit(Fit.ONE_PAGE)
        .header("Cabin & Sons", "ROUND 1", "rev 1")
        .footer("", "page {page} of {pages}", "12 logs");
  }

  private static Sheet round() {
    SheetBuilder sheet =
        new SheetBuilder(ROUND, site())
            .id("round_01")
            .widths(14, 12, 12, 14, 14, 12, 12, 12)
            .freeze(1, 0)
            .printArea(Area.of("A1:H20"));
    sheet.row(1).height(70).addAcross(4, Cell.text("ROUND 1").role(Role.ROUND_HUGE));
    sheet.addAcross(4, Cell.text("REV 1").role(Role.REVISION));
    mark(sheet, "A", Cell.formula("ROUND(G8/4*16,0)/16", 2.8125));
    mark(sheet, "C", Cell.number(3));
    mark(sheet, "E", Cell.number(1.5));
    mark(sheet, "G", Cell.number(0.625));
    sheet.row(7).height(32);
    for (String head : List.of("Wall", "Log", "Plan", "Measured", "Used", "Ok?", "D", "Cut")) {
      sheet.add(Cell.text(head).role(Role.COLUMN_HEAD));
    }
    logs(sheet);
    sheet.merge("A14:H14", Cell.text("=1+1 is text, and so is +3").role(Role.CAUTION));
    sheet.row(14).height(40);
    sheet.put("A15", Cell.text("to the list").role(Role.LINK).linkTo(LISTS));
    sheet.put("B15", Cell.truth(true)).put("C15", Cell.formula("G8>3", true));
    sheet.put("D15", Cell.text("x").role(Role.WASTE));
    sheet.box(Area.of("B17:D18")).put("C17", Cell.text("boxed").role(Role.PLAIN));
    return sheet
        .figure(new Figure.Picture(PNG, new Figure.Over(Area.of("F16:H20")), "a log"))
        .build();
  }

  private static void mark(SheetBuilder sheet, String column, Cell value) {
    Area top = Area.of(column + "3").sized(1, 2);
    sheet.merge(top, Cell.text("▲ UPPER · inside face").role(Role.MARK_LABEL));
    sheet.merge(top.moved(1, 0), value.role(Role.MARK_HUGE).format(Format.FRACTION));
    sheet.merge(top.moved(2, 0), Cell.text("in above centre line").role(Role.MARK_NOTE));
    sheet.row(4).height(66);
  }

  private static void logs(SheetBuilder sheet) {
    String[] walls = {"N", "E", "S", "W"};
    double[] plans = {11.25, 10.75, 11.5, 10.5625};
    for (int index = 0; index < walls.length; index++) {
      int row = 8 + index;
      sheet.row(row).height(36);
      sheet.add(Cell.text(walls[index]).role(Role.LARGE));
      sheet.add(Cell.text("#0" + index).role(Role.LARGE));
      sheet.add(Cell.number(plans[index]).role(Role.LARGE_NUMBER).format(Format.FRACTION));
      sheet.add(
          Cell.blank(Role.TYPED_IN_LARGE)
              .format(Format.FRACTION)
              .named(Book.nameOf("Measured", 1, walls[index])));
      sheet.add(Cell.blank(Role.TYPED_IN_TEXT));
      sheet.add(
          Cell.formula(
              "IF(D" + row + "=\"\",\"\",IF(D" + row + "<Gap_least,\"▼ low\",\"ok\"))", ""));
      sheet.add(
          Cell.formula("IF(D" + row + "=\"\",C" + row + ",D" + row + ")", plans[index])
              .format(Format.FRACTION));
      sheet.add(Cell.blank(Role.TICK));
    }
    sheet.rule(
        new Rule.Between(
            Area.of("D8:D11"), 4, 36, Rule.Advice.refusing("Diameter", "4 to 36 in").prompt("in")));
    sheet.rule(new Rule.OneOfCells(Area.of("E8:E11"), "Tags", Rule.Advice.asking("Log", "Sure?")));
    sheet.rule(
        new Rule.OneOf(
            Area.of("H8:H10"), List.of("x", "done"), Rule.Advice.refusing("Tick", "x or done")));
    sheet.rule(new Rule.Holds(Area.of("H11"), "LEN(H11)<4", Rule.Advice.refusing("Tick", "short")));
    sheet.rule(new Rule.LooksLike(Area.of("F8:F11"), "F8=\"▼ low\"", Role.FLAG));
    sheet.rule(new Rule.LooksLike(Area.of("G8:G11"), "D8<>\"\"", Role.CHANGED));
  }

  private static Sheet lists() {
    PageSetup page = PageSetup.of(PageKind.TABLE, Paper.A4).header("Cabin", "", "");
    SheetBuilder sheet = new SheetBuilder(LISTS, page).widths(20, 12, 12, 12, 40);
    for (String head : List.of("Class", "Needed", "On hand", "Least", "Remarks")) {
      sheet.add(Cell.text(head).role(Role.COLUMN_HEAD));
    }
    for (int index = 0; index < 80; index++) {
      sheet.nextRow();
      sheet.add(Cell.text("class " + index));
      sheet.add(Cell.number(10 + index % 5));
      sheet.add(Cell.formula("B" + sheet.row() + "-1", 9 + index % 5));
      sheet.add(Cell.number(3.5).format(Format.WHOLE));
      sheet.add(Cell.text("_x0041_ a\tb\r\nc \u0001 < & \uD83D\uDE00 " + index));
    }
    sheet.printTitles(1, 1).freeze(1, 1).breakAfter(41).unlocked();
    return sheet.figure(chart()).build();
  }

  private static Figure chart() {
    Area names = Area.of("A2:A7");
    return new Figure.Chart(
        "Logs on hand against needed",
        Figure.Axes.upright("class", "logs"),
        List.of(
            series("needed", names, 1, Figure.Look.BAR_DARK),
            series("on hand", names, 2, Figure.Look.BAR_HATCHED),
            series("least", names, 3, Figure.Look.LINE_DASHED)),
        new Figure.Over(Area.of("A85:E105")),
        "bars of logs needed and on hand");
  }

  private static Figure.Series series(String name, Area names, int right, Figure.Look look) {
    return new Figure.Series(name, LISTS, names, names.moved(0, right), look);
  }

  private static Sheet template() {
    SheetBuilder sheet =
        new SheetBuilder("Template", PageSetup.of(PageKind.FULL_SIZE, Paper.LETTER)).widths(10, 10);
    Length inch = Length.ofInches(1);
    sheet.figure(new Figure.Picture(PNG, Figure.At.corner("B2", inch.times(3), inch), "3 in"));
    return sheet.put("A1", Cell.text("3 in wide, 1 in high").role(Role.PLAIN_BOLD)).build();
  }

  private static Sheet hidden() {
    return new SheetBuilder("Ids", PageSetup.of(PageKind.TABLE, Paper.A4))
        .hidden()
        .put("A1", Cell.text("of no use to a person"))
        .build();
  }

  private static byte[] png() {
    BufferedImage image = new BufferedImage(300, 100, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D drawing = image.createGraphics();
    drawing.setColor(Color.WHITE);
    drawing.fillRect(2, 2, 296, 96);
    drawing.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }
}
