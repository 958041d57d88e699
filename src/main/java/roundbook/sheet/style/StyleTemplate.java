package roundbook.sheet.style;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Margins;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.problem.Read;

/**
 * The looks of every role, format and page, as one template says.
 *
 * <p>A template is a workbook that a crew can change without touching the program:
 *
 * <ul>
 *   <li>the cell named {@code Style_TITLE} looks as every cell of the role {@link Role#TITLE} will:
 *       its font, fill, borders, alignment, number format and lock are taken, not its content;
 *   <li>the cell named {@code Format_FRACTION} has the number format of {@link
 *       Cell.Format#FRACTION};
 *   <li>the sheet with the cell named {@code Page_SITE} has the margins of {@link PageKind#SITE}.
 * </ul>
 *
 * <p>What a template lacks is taken from {@link #standard()} and reported.
 */
public final class StyleTemplate {
  static final String STYLE = "Style_";
  static final String FORMAT = "Format_";
  static final String PAGE = "Page_";

  private static final StyleTemplate STANDARD =
      new StyleTemplate(StandardLooks.looks(), standardFormats(), standardMargins());

  private final Map<Role, Look> looks;
  private final Map<Cell.Format, String> formats;
  private final Map<PageKind, Margins> margins;

  StyleTemplate(
      Map<Role, Look> looks, Map<Cell.Format, String> formats, Map<PageKind, Margins> margins) {
    this.looks = Collections.unmodifiableMap(new EnumMap<>(looks));
    this.formats = Collections.unmodifiableMap(new EnumMap<>(formats));
    this.margins = Collections.unmodifiableMap(new EnumMap<>(margins));
  }

  private static Map<Cell.Format, String> standardFormats() {
    Map<Cell.Format, String> formats = new EnumMap<>(Cell.Format.class);
    for (Cell.Format format : Cell.Format.values()) {
      formats.put(format, format.code());
    }
    return formats;
  }

  /** Returns the built-in template. */
  public static StyleTemplate standard() {
    return STANDARD;
  }

  /**
   * Reads a template workbook.
   *
   * @param bytes the file's content
   * @param file the file's name for messages
   * @return the template with one problem for each thing it lacks, or only a problem if the bytes
   *     are no workbook
   */
  public static Read<StyleTemplate> read(byte[] bytes, String file) {
    return new TemplateReader(file).read(bytes);
  }

  public Look look(Role role) {
    return looks.get(role);
  }

  private static Map<PageKind, Margins> standardMargins() {
    Map<PageKind, Margins> margins = new EnumMap<>(PageKind.class);
    for (PageKind kind : PageKind.values()) {
      margins.put(kind, kind.margins());
    }
    return margins;
  }

  String format(Cell.Format format) {
    return formats.get(format);
  }

  public Margins margins(PageKind kind) {
    return margins.get(kind);
  }

  /** Returns this template as a workbook that {@link #read} understands. */
  public Book toBook() {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(styles());
    sheets.add(formats());
    for (PageKind kind : PageKind.values()) {
      sheets.add(page(kind));
    }
    return new Book(Book.Properties.titled("Style template"), sheets, new TreeMap<>());
  }

  private static SheetBuilder begin(String name, PageKind kind) {
    PageSetup page = PageSetup.of(kind, PageSetup.Paper.LETTER).footer("", "{page} / {pages}", "");
    return new SheetBuilder(name, page).unlocked();
  }

  private static SheetBuilder heads(SheetBuilder sheet, String... heads) {
    for (String head : heads) {
      sheet.add(Cell.text(head).role(Role.COLUMN_HEAD));
    }
    return sheet.printTitles(sheet.row(), sheet.row()).freeze(sheet.row(), 0);
  }

  private static Sheet styles() {
    SheetBuilder sheet = begin("Styles", PageKind.TABLE).widths(24, 30, 34);
    heads(sheet, "Role", "Looks like this", "What for");
    for (Role role : Role.values()) {
      sheet.nextRow().height(role.name().contains("HUGE") ? 80 : 36);
      sheet.add(Cell.text(role.name()));
      sheet.add(Cell.text("3 1/2 N").role(role).named(STYLE + role.name()));
      sheet.add(Cell.text(role.purpose()));
    }
    return sheet.build();
  }

  private static Sheet formats() {
    SheetBuilder sheet = begin("Formats", PageKind.TABLE).widths(24, 20, 20);
    heads(sheet, "Format", "Looks like this", "Below nothing");
    for (Cell.Format format : Cell.Format.values()) {
      sheet.nextRow().add(Cell.text(format.name()));
      sheet.add(Cell.number(1234.5625).format(format).named(FORMAT + format.name()));
      sheet.add(Cell.number(-2.5).format(format));
    }
    return sheet.build();
  }

  private static Sheet page(PageKind kind) {
    SheetBuilder sheet = begin("Page " + kind.name(), kind).widths(60);
    String text = "Sheets of this kind take this sheet's margins.";
    return sheet.add(Cell.text(text).role(Role.NOTE).named(PAGE + kind.name())).build();
  }
}
