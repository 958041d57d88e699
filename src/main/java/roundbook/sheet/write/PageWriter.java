package roundbook.sheet.write;

import org.apache.poi.ss.usermodel.HeaderFooter;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.Margins;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.sheet.style.Look;

/** Writes how one sheet prints. */
final class PageWriter {
  private static final int MOST_IN_A_BAND = 60;

  private final Sheet from;
  private final XSSFSheet to;
  private final Writing writing;

  PageWriter(Sheet from, XSSFSheet to, Writing writing) {
    this.from = from;
    this.to = to;
    this.writing = writing;
  }

  void write() {
    paper();
    margins(writing.template().margins(from.page().kind()));
    band(to.getHeader(), from.page().header());
    band(to.getFooter(), from.page().footer());
    printed();
  }

  private void paper() {
    PageSetup page = from.page();
    XSSFPrintSetup setup = to.getPrintSetup();
    boolean letter = page.paper() == PageSetup.Paper.LETTER;
    setup.setPaperSize(letter ? XSSFPrintSetup.LETTER_PAPERSIZE : XSSFPrintSetup.A4_PAPERSIZE);
    setup.setLandscape(page.landscape());
    if (page.fit().isFullSize()) {
      setup.setScale((short) 100);
    } else {
      to.setFitToPage(true);
      setup.setFitWidth((short) page.fit().wide());
      setup.setFitHeight((short) page.fit().tall());
    }
  }

  private void margins(Margins margins) {
    to.setMargin(PageMargin.LEFT, margins.left());
    to.setMargin(PageMargin.RIGHT, margins.right());
    to.setMargin(PageMargin.TOP, margins.top());
    to.setMargin(PageMargin.BOTTOM, margins.bottom());
    to.setMargin(PageMargin.HEADER, margins.header());
    to.setMargin(PageMargin.FOOTER, margins.footer());
    to.setHorizontallyCenter(from.page().kind() != PageKind.FULL_SIZE);
  }

  private void band(HeaderFooter band, PageSetup.Band texts) {
    band.setLeft(coded(texts.left()));
    band.setCenter(coded(texts.centre()));
    band.setRight(coded(texts.right()));
  }

  /** Returns a text with the font's codes; a header holds 255 characters in all, so it is cut. */
  private String coded(String text) {
    if (text.isEmpty()) {
      return "";
    }
    Look.Font font = writing.template().look(Role.HEADER_FOOTER).font();
    String weight = font.bold() ? "Bold" : "Regular";
    String code = "&\"" + font.name() + "," + weight + "\"&" + Math.round(font.size()) + " ";
    String cut =
        text.length() > MOST_IN_A_BAND ? text.substring(0, MOST_IN_A_BAND - 1) + "…" : text;
    String safe = CellText.stored(cut.replaceAll("\\s+", " ")).replace("&", "&&");
    return code + safe.replace("{page}", "&P").replace("{pages}", "&N");
  }

  private void printed() {
    Sheet.Print print = from.print();
    int index = to.getWorkbook().getSheetIndex(to);
    print.area().ifPresent(area -> to.getWorkbook().setPrintArea(index, area.absolute()));
    if (print.firstTitleRow() > 0) {
      to.setRepeatingRows(
          new CellRangeAddress(print.firstTitleRow() - 1, print.lastTitleRow() - 1, -1, -1));
    }
    print.breaks().forEach(row -> to.setRowBreak(row - 1));
  }
}
