package roundbook.sheet.write;

import roundbook.page.Area;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Margins;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.sheet.style.Look;

/** Writes how one sheet prints. */
final class PageWriter {
  private static final int MOST_IN_A_BAND = 60;
  private static final int LETTER = 1;
  private static final int A4 = 9;
  private static final int LAST_COLUMN = Area.LAST_COLUMN - 1;

  private final Sheet from;
  private final PageSetup page;
  private final Writing writing;

  PageWriter(Sheet from, Writing writing) {
    this.from = from;
    this.page = from.page();
    this.writing = writing;
  }

  /** Writes, before all else of a sheet, that it is made to fit its pages. */
  void fit(Xml xml) {
    if (!page.fit().isFullSize()) {
      xml.open("sheetPr").open("pageSetUpPr").with("fitToPage", true).close().close();
    }
  }

  void write(Xml xml) {
    boolean centred = page.kind() != PageKind.FULL_SIZE;
    xml.open("printOptions").with("horizontalCentered", centred).close();
    margins(xml, writing.template().margins(page.kind()));
    paper(xml);
    xml.open("headerFooter").text("oddHeader", coded(page.header()));
    xml.text("oddFooter", coded(page.footer())).close();
    breaks(xml);
  }

  private static void margins(Xml xml, Margins margins) {
    xml.open("pageMargins").with("left", margins.left()).with("right", margins.right());
    xml.with("top", margins.top()).with("bottom", margins.bottom());
    xml.with("header", margins.header()).with("footer", margins.footer()).close();
  }

  private void paper(Xml xml) {
    xml.open("pageSetup").with("paperSize", page.paper() == PageSetup.Paper.LETTER ? LETTER : A4);
    xml.with("orientation", page.landscape() ? "landscape" : "portrait");
    if (page.fit().isFullSize()) {
      xml.with("scale", 100).close();
    } else {
      xml.with("fitToWidth", page.fit().wide()).with("fitToHeight", page.fit().tall()).close();
    }
  }

  private String coded(PageSetup.Band band) {
    return coded("&L", band.left()) + coded("&C", band.centre()) + coded("&R", band.right());
  }

  /** Returns a text with the font's codes; a header holds 255 characters in all, so it is cut. */
  private String coded(String place, String text) {
    if (text.isEmpty()) {
      return "";
    }
    Look.Font font = writing.template().look(Role.HEADER_FOOTER).font();
    String code = font.name() + (font.bold() ? ",Bold" : ",Regular");
    String cut =
        text.length() > MOST_IN_A_BAND ? text.substring(0, MOST_IN_A_BAND - 1) + "…" : text;
    String safe = CellText.stored(cut.replaceAll("\\s+", " ")).replace("&", "&&");
    String shown = safe.replace("{page}", "&P").replace("{pages}", "&N");
    return place + "&\"" + code + "\"&" + Math.round(font.size()) + " " + shown;
  }

  private void breaks(Xml xml) {
    int count = from.print().breaks().size();
    if (count > 0) {
      xml.open("rowBreaks").with("count", count).with("manualBreakCount", count);
      for (int row : from.print().breaks()) {
        xml.open("brk").with("id", row).with("max", LAST_COLUMN).with("man", true).close();
      }
      xml.close();
    }
  }

  /** Names the cells that print and the rows that repeat, for the sheet of a number from 0. */
  void names(int index) {
    Sheet.Print print = from.print();
    print.area().ifPresent(area -> writing.nameOfSheet(index, "Print_Area", area.on(from.name())));
    if (print.firstTitleRow() > 0) {
      String sheet = Area.cell(1, 1).on(from.name()).replace("$A$1", "");
      String rows = "$" + print.firstTitleRow() + ":$" + print.lastTitleRow();
      writing.nameOfSheet(index, "Print_Titles", sheet + rows);
    }
  }
}
