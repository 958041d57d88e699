package roundbook.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Says in words why a file could not be read or written. */
final class FileFailure {
  private FileFailure() {}

  /** Returns a whole line: what failed, the file and why. */
  static String line(IOException broken) {
    boolean there = broken instanceof FileAlreadyExistsException;
    return "error: cannot " + (there ? "write: " : "read or write: ") + said(broken);
  }

  /** Returns the file and why, in one line without a closing stop. */
  private static String said(IOException broken) {
    if (!(broken instanceof FileSystemException denied)) {
      return String.valueOf(broken.getMessage());
    }
    String reason = denied.getReason();
    return denied.getFile() + ": " + (reason == null ? why(denied) : reason);
  }

  /** The system's exceptions of the usual kinds carry no reason but their names. */
  private static String why(FileSystemException denied) {
    if (denied instanceof FileAlreadyExistsException) {
      return "there is a file of that name already; give another name, or --force where it is"
          + " taken";
    } else if (denied instanceof NoSuchFileException) {
      return "there is no such file or folder";
    } else if (denied instanceof AccessDeniedException) {
      return "it may not be read or written";
    } else if (denied instanceof NotDirectoryException) {
      return "it is no folder";
    } else if (denied instanceof DirectoryNotEmptyException) {
      return "the folder is not empty";
    }
    return denied.getClass().getSimpleName();
  }
}
