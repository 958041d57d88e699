package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
