package roundbook.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file whole or not at all.
 *
 * <p>The bytes go to a temporary file in the same folder, are forced to the disk, reopened and
 * checked, and only then moved to their name. A run killed at any moment leaves either the whole
 * file or a temporary one whose name ends in {@code .part}, never half a workbook.
 */
final class SafeFile {
  private SafeFile() {}

  /** Writes the content. */
  interface Content {
    /** Writes everything to a stream, which the caller closes. */
    void writeTo(OutputStream out) throws IOException;
  }

  /** Checks a file that was written. */
  interface Check {
    /** Throws when the file does not hold what it should. */
    void accept(Path written) throws IOException;
  }

  /**
   * Writes a file.
   *
   * @param target where it goes
   * @param replace whether a file of that name may be replaced
   * @param content what is written
   * @param check run on the temporary file before it is moved
   * @throws FileAlreadyExistsException if the name is taken and may not be replaced
   * @throws IOException if the disk is full, the folder cannot be written, or the check fails
   */
  static void write(Path target, boolean replace, Content content, Check check) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    if (!replace && Files.exists(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Path temporary = folder.resolve("." + target.getFileName() + "-" + UUID.randomUUID() + ".part");
    try {
      fill(temporary, content);
      check.accept(temporary);
      move(temporary, target, replace);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  private static void fill(Path temporary, Content content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(temporary, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
      OutputStream out = Channels.newOutputStream(channel);
      content.writeTo(out);
      out.flush();
      channel.force(true);
    }
  }

  private static void move(Path temporary, Path target, boolean replace) throws IOException {
    if (!replace) {
      claim(temporary, target);
      return;
    }
    try {
      Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException unsupported) {
      Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Gives the file its name unless another run took the name meanwhile; links are atomic. */
  private static void claim(Path temporary, Path target) throws IOException {
    try {
      Files.createLink(target, temporary);
    } catch (UnsupportedOperationException | java.nio.file.FileSystemException noLinks) {
      if (noLinks instanceof FileAlreadyExistsException taken) {
        throw taken;
      }
      Files.move(temporary, target);
    }
  }
}
