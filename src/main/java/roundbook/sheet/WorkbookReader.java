package roundbook.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import roundbook.page.Book;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Reads every sheet of a workbook, .xlsx or old .xls, as tables of typed cells.
 *
 * <p>The content decides what the file is, never its name. Whatever is wrong with the file ends in
 * one problem, never in an exception.
 */
public final class WorkbookReader {
  private WorkbookReader() {}

  /** Tells whether bytes begin like a workbook, or like another file that is no text table. */
  public static boolean looksBinary(byte[] bytes) {
    FileMagic magic = FileMagic.valueOf(bytes);
    return magic != FileMagic.UNKNOWN || hasHtml(bytes) || bytes.length > 0 && binary(bytes);
  }

  /**
   * Reads a workbook's sheets.
   *
   * @param file the file's name, for messages
   * @param bytes its content
   * @return its sheets in order, or the one reason why there are none
   */
  public static Read<List<Table>> read(String file, byte[] bytes) {
    FileMagic magic = FileMagic.valueOf(bytes);
    if (magic != FileMagic.OOXML && magic != FileMagic.OLE2) {
      return refused(file, "the file is " + name(magic, bytes) + ", not a workbook");
    }
    try (Workbook book = WorkbookFactory.create(new ByteArrayInputStream(bytes))) {
      return isCrewBook(book) ? crew(file) : Read.of(tables(file, book), List.of());
    } catch (EncryptedDocumentException locked) {
      return refused(file, "the workbook is protected by a password");
    } catch (IOException | RuntimeException | LinkageError broken) {
      return refused(file, "the workbook cannot be read: " + reason(broken));
    } catch (OutOfMemoryError tooLarge) {
      return refused(file, "the workbook is too large for the memory given");
    }
  }

  /**
   * Opens a workbook that was just written and reads every cell of it.
   *
   * @throws IOException if it does not open or has no sheet
   */
  public static void verify(String file, byte[] bytes) throws IOException {
    try (Workbook book = WorkbookFactory.create(new ByteArrayInputStream(bytes))) {
      if (tables(file, book).isEmpty()) {
        throw new IOException("the workbook written has no sheet");
      }
    } catch (RuntimeException broken) {
      throw new IOException("the workbook written does not open: " + reason(broken), broken);
    }
  }

  private static boolean isCrewBook(Workbook book) {
    return book instanceof XSSFWorkbook own
        && own.getProperties().getCustomProperties().contains(Book.CREW_PROPERTY);
  }

  private static Read<List<Table>> crew(String file) {
    return Read.failed(
        List.of(
            Problem.of(
                ProblemCode.CREW_WORKBOOK,
                CellRef.ofFile(file),
                "",
                "this is a crew workbook that roundbook wrote, not a tally")));
  }

  private static List<Table> tables(String file, Workbook book) {
    List<Table> tables = new ArrayList<>();
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      Sheet sheet = book.getSheetAt(i);
      boolean hidden = book.getSheetVisibility(i) != SheetVisibility.VISIBLE;
      CellReader cells = new CellReader();
      List<Row> rows = new ArrayList<>();
      for (org.apache.poi.ss.usermodel.Row row : sheet) {
        Row read = cells.row(row);
        if (!read.isBlank()) {
          rows.add(read);
        }
      }
      tables.add(new Table(file, sheet.getSheetName(), hidden, false, rows));
    }
    return tables;
  }

  private static Read<List<Table>> refused(String file, String message) {
    return Read.failed(
        List.of(Problem.of(ProblemCode.NOT_A_WORKBOOK, CellRef.ofFile(file), "", message)));
  }

  private static String reason(Throwable broken) {
    String message = Optional.ofNullable(broken.getMessage()).orElse("");
    String line = message.lines().findFirst().orElse("");
    return line.isEmpty() ? broken.getClass().getSimpleName() : line.split("[.;] ")[0];
  }

  private static String name(FileMagic magic, byte[] bytes) {
    if (hasHtml(bytes)) {
      return "a web page";
    }
    return switch (magic) {
      case RTF -> "a text document (RTF)";
      case PDF -> "a PDF document";
      case XML -> "an XML file";
      case WORD2, MSWRITE -> "an old text document";
      case BIFF2, BIFF3, BIFF4 -> "a workbook of a kind older than 1997";
      case JPEG, PNG, GIF, BMP, TIFF, EMF, WMF -> "a picture";
      default -> "of no kind that is known";
    };
  }

  private static boolean hasHtml(byte[] bytes) {
    String start =
        new String(bytes, 0, Math.min(bytes.length, 512), java.nio.charset.StandardCharsets.UTF_8)
            .strip()
            .toLowerCase(java.util.Locale.ROOT);
    return start.startsWith("<") && start.matches("(?s).*<(?:!doctype html|html|table|head).*");
  }

  /** Text has no zero bytes, but for UTF-16, which has one in every pair. */
  private static boolean binary(byte[] bytes) {
    int zeros = 0;
    int length = Math.min(bytes.length, 4096);
    for (int i = 0; i < length; i++) {
      zeros += bytes[i] == 0 ? 1 : 0;
    }
    boolean utf16 = zeros > length / 4 || bytes[0] == (byte) 0xFF || bytes[0] == (byte) 0xFE;
    return zeros > 0 && !utf16;
  }
}
