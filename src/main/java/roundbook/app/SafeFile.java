package roundbook.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.apache.commons.io.output.ProxyOutputStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Writes a file whole or not at all.
 *
 * <p>The bytes go to a temporary file in the same folder, are forced to the disk, reopened and
 * checked, and only then moved to their name. A run killed at any moment leaves either the whole
 * file or a temporary one whose name ends in {@code .part}, never half a workbook. A temporary file
 * is locked while it is written, and the system takes the lock off when the run ends, however it
 * ends; so the next run knows what a killed one left, and clears it away.
 */
final class SafeFile {
  private static final Logger LOG = LoggerFactory.getLogger(SafeFile.class);
  private static final String PART = ".part";

  /** How long a temporary file may stand without its lock, between being made and being locked. */
  private static final Duration FRESH = Duration.ofMinutes(1);

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
    clear(folder, target);
    Path temporary = folder.resolve(stem(target) + UUID.randomUUID() + PART);
    try {
      fill(temporary, content);
      check.accept(temporary);
      move(temporary, target, replace);
      settle(folder);
    } catch (AccessDeniedException denied) {
      throw new FileSystemException(target.toString(), null, "its folder may not be written to");
    } catch (NoSuchFileException nowhere) {
      throw new FileSystemException(target.toString(), null, "there is no such folder");
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  private static void fill(Path temporary, Content content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(temporary, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
      channel.lock();
      fill(new Remembering(Channels.newOutputStream(channel)), content);
      channel.force(true);
    }
  }

  /** A library may wrap a failed write in an exception of its own; the failure itself is thrown. */
  private static void fill(Remembering out, Content content) throws IOException {
    try {
      content.writeTo(out);
      out.flush();
    } catch (RuntimeException wrapped) {
      if (out.failure != null) {
        throw out.failure;
      }
      throw wrapped;
    }
  }

  /** A stream that remembers why it failed. */
  private static final class Remembering extends ProxyOutputStream {
    private IOException failure;

    Remembering(OutputStream out) {
      super(out);
    }

    @Override
    protected void handleIOException(IOException broken) throws IOException {
      failure = broken;
      throw broken;
    }
  }

  private static String stem(Path target) {
    return "." + target.getFileName() + "-";
  }

  /** Clears away what killed runs left of a target; what cannot be cleared does no harm. */
  private static void clear(Path folder, Path target) {
    String glob = stem(target).replaceAll("[*?\\[\\]{}\\\\]", "\\\\$0") + "*" + PART;
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, glob)) {
      for (Path part : parts) {
        if (isLeft(part)) {
          Files.deleteIfExists(part);
        }
      }
    } catch (IOException | UnsupportedOperationException denied) {
      LOG.debug("nothing cleared in {}: {}", folder, denied.toString());
    }
  }

  /** Returns whether no run is writing a temporary file: it is not fresh, and nobody locks it. */
  private static boolean isLeft(Path part) throws IOException {
    Instant fresh = Instant.now().minus(FRESH);
    if (Files.getLastModifiedTime(part).toInstant().isAfter(fresh)) {
      return false;
    }
    try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE);
        FileLock lock = channel.tryLock()) {
      return lock != null;
    } catch (OverlappingFileLockException own) {
      return false;
    }
  }

  /** Forces the folder's list of names to the disk, where the system lets one. */
  private static void settle(Path folder) {
    try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
      names.force(true);
    } catch (IOException | UnsupportedOperationException denied) {
      LOG.debug("the names of {} were not forced to the disk: {}", folder, denied.toString());
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
    } catch (UnsupportedOperationException | FileSystemException noLinks) {
      if (noLinks instanceof FileAlreadyExistsException taken) {
        throw taken;
      }
      Files.move(temporary, target);
    }
  }
}
