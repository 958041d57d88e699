package roundbook.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/**
 * A zip stream whose entries all bear the same time, in every time zone.
 *
 * <p>POI writes straight into such a stream. Its own switch for reproducible files is one for the
 * whole process, so it does not serve several files written side by side.
 */
final class FixedZip extends ZipArchiveOutputStream {
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  FixedZip(OutputStream out) {
    super(out);
  }

  @Override
  public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
    entry.setTimeLocal(TIME);
    super.putArchiveEntry(entry);
  }
}
