package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is written whole or not at all, and nothing else is left behind. */
class SafeFileTest {
  @TempDir Path folder;

  @Test
  void writesTheWholeFile() throws IOException {
    Path target = folder.resolve("book.xlsx");
    SafeFile.write(target, false, out -> out.write(new byte[] {1, 2, 3}), written -> {});
    assertEquals(3, Files.size(target));
    assertEquals(List.of(target), names());
  }

  @Test
  void leavesAnExistingFileAlone() throws IOException {
    Path target = Files.writeString(folder.resolve("book.xlsx"), "old");
    assertThrows(
        FileAlreadyExistsException.class,
        () -> SafeFile.write(target, false, out -> out.write(1), written -> {}));
    assertEquals("old", Files.readString(target));
  }

  @Test
  void replacesOnlyWhenAsked() throws IOException {
    Path target = Files.writeString(folder.resolve("book.xlsx"), "old");
    SafeFile.write(target, true, out -> out.write("new".getBytes()), written -> {});
    assertEquals("new", Files.readString(target));
  }

  @Test
  void leavesNothingWhenWritingFailsHalfWay() throws IOException {
    Path target = folder.resolve("book.xlsx");
    assertThrows(
        IOException.class,
        () ->
            SafeFile.write(
                target,
                false,
                out -> {
                  out.write(new byte[1000]);
                  throw new IOException("disk full");
                },
                written -> {}));
    assertEquals(List.of(), names());
  }

  @Test
  void leavesTheOldFileWhenTheCheckFails() throws IOException {
    Path target = Files.writeString(folder.resolve("book.xlsx"), "old");
    assertThrows(
        IOException.class,
        () ->
            SafeFile.write(
                target,
                true,
                out -> out.write(1),
                written -> {
                  throw new IOException("does not reopen");
                }));
    assertEquals("old", Files.readString(target));
    assertEquals(List.of(target), names());
  }

  @Test
  void anotherRunThatTookTheNameMeanwhileKeepsIt() {
    Path target = folder.resolve("book.xlsx");
    assertThrows(
        FileAlreadyExistsException.class,
        () ->
            SafeFile.write(
                target,
                false,
                out -> out.write(1),
                written -> Files.writeString(target, "other run")));
    assertEquals("other run", assertDoesNotThrowRead(target));
  }

  @Test
  void clearsAwayWhatAKilledRunLeft() throws IOException {
    Path target = folder.resolve("job [1] - rounds rev1.xlsx");
    Path left = Files.writeString(folder.resolve("." + target.getFileName() + "-1.part"), "half");
    Path other = Files.writeString(folder.resolve(".job 2.xlsx-1.part"), "half");
    Path fresh = Files.writeString(folder.resolve("." + target.getFileName() + "-2.part"), "half");
    Path locked = Files.writeString(folder.resolve("." + target.getFileName() + "-3.part"), "half");
    FileTime old = FileTime.from(Instant.now().minusSeconds(3600));
    for (Path each : List.of(left, other, locked)) {
      Files.setLastModifiedTime(each, old);
    }
    try (FileChannel writing = FileChannel.open(locked, StandardOpenOption.WRITE)) {
      writing.lock();
      SafeFile.write(target, false, out -> out.write(1), written -> {});
    }
    assertEquals(Set.of(target, other, fresh, locked), Set.copyOf(names()));
  }

  /** A disk of 64 KB in memory, which is full half-way. */
  @Test
  void aFullDiskLeavesTheOldFileAndNothingElse() throws IOException {
    Configuration small = Configuration.unix().toBuilder().setMaxSize(64 * 1024).build();
    try (FileSystem disk = Jimfs.newFileSystem(small)) {
      Path own = Files.createDirectory(disk.getPath("/yard"));
      Path target = Files.writeString(own.resolve("book.xlsx"), "old");
      IOException full =
          assertThrows(
              IOException.class,
              () ->
                  SafeFile.write(target, true, out -> out.write(new byte[100_000]), written -> {}));
      assertEquals("out of disk space", full.getMessage());
      assertEquals("old", Files.readString(target));
      try (var files = Files.list(own)) {
        assertEquals(List.of(target), files.toList());
      }
    }
  }

  @Test
  void saysWhyAWriteFailedWhateverALibraryMakesOfIt() throws IOException {
    Configuration small = Configuration.unix().toBuilder().setMaxSize(64 * 1024).build();
    try (FileSystem disk = Jimfs.newFileSystem(small)) {
      Path target = disk.getPath("/book.xlsx");
      SafeFile.Content wrapping =
          out -> {
            try {
              out.write(new byte[100_000]);
            } catch (IOException full) {
              throw new IllegalStateException("failed to save");
            }
          };
      IOException full =
          assertThrows(
              IOException.class, () -> SafeFile.write(target, false, wrapping, written -> {}));
      assertEquals("out of disk space", full.getMessage());
    }
  }

  @Test
  void namesTheFileThatWasToBeWritten() {
    Path target = folder.resolve("nowhere").resolve("book.xlsx");
    IOException missing =
        assertThrows(
            IOException.class,
            () -> SafeFile.write(target, false, out -> out.write(1), written -> {}));
    assertEquals(target + ": there is no such folder", missing.getMessage());
  }

  private static String assertDoesNotThrowRead(Path target) {
    try {
      return Files.readString(target);
    } catch (IOException fault) {
      throw new AssertionError(fault);
    }
  }

  private List<Path> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.toList();
    }
  }
}
