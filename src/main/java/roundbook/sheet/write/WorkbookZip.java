package roundbook.sheet.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.Deflater;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/**
 * The zip stream of a workbook, into which the rows of its sheets are put.
 *
 * <p>POI writes straight into such a stream. Two things are changed on the way. All entries bear
 * the same time, in every time zone: the library's own switch for that is one for the whole
 * process, so it does not serve several files written side by side. And where a sheet's rows would
 * stand, which the library has none of, stand those made by {@link RowWriter}. Pictures, packed as
 * they are, are not packed again.
 */
final class WorkbookZip extends ZipArchiveOutputStream {
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
  private static final int LEVEL = 6;
  private static final String NO_ROWS = "<sheetData/>";

  private final Map<String, byte[]> rows;
  private final ByteArrayOutputStream sheet = new ByteArrayOutputStream();
  private byte[] rowsOfEntry;

  /**
   * Begins to write.
   *
   * @param out where to
   * @param rows the rows of each sheet's part, by the name of its entry
   */
  WorkbookZip(OutputStream out, Map<String, byte[]> rows) {
    super(out);
    this.rows = rows;
  }

  @Override
  public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
    entry.setTimeLocal(TIME);
    rowsOfEntry = rows.get(entry.getName());
    setLevel(entry.getName().endsWith(".png") ? Deflater.NO_COMPRESSION : LEVEL);
    super.putArchiveEntry(entry);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    if (rowsOfEntry == null) {
      super.write(bytes, offset, length);
    } else {
      sheet.write(bytes, offset, length);
    }
  }

  @Override
  public void closeArchiveEntry() throws IOException {
    if (rowsOfEntry != null) {
      writeWithRows(sheet.toString(StandardCharsets.UTF_8));
      sheet.reset();
      rowsOfEntry = null;
    }
    super.closeArchiveEntry();
  }

  private void writeWithRows(String text) throws IOException {
    int at = text.indexOf(NO_ROWS);
    if (at < 0) {
      throw new IllegalStateException("a sheet without a place for its rows");
    }
    writeAll(text.substring(0, at).getBytes(StandardCharsets.UTF_8));
    writeAll(rowsOfEntry);
    writeAll(text.substring(at + NO_ROWS.length()).getBytes(StandardCharsets.UTF_8));
  }

  private void writeAll(byte[] bytes) throws IOException {
    super.write(bytes, 0, bytes.length);
  }
}
