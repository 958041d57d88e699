package roundbook.sheet.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.EOFException;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipException;
import org.apache.poi.EncryptedDocumentException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;

/** Whatever is thrown while a file is read becomes one problem of that file. */
class GuardTest {
  static Stream<Arguments> thrown() {
    Exception deep = new ZipException("invalid");
    for (int i = 0; i < 10; i++) {
      deep = new IllegalStateException("wrapped", deep);
    }
    return Stream.of(
        Arguments.of(new EncryptedDocumentException("no"), "encrypted"),
        Arguments.of(new IOException(new EncryptedDocumentException("no")), "encrypted"),
        Arguments.of(new EOFException(), "unreadable.cut-short"),
        Arguments.of(new ZipException("invalid"), "unreadable.cut-short"),
        Arguments.of(deep, "unreadable.cut-short"),
        Arguments.of(new IOException("Truncated ZIP file"), "unreadable.cut-short"),
        Arguments.of(new IllegalStateException("Unexpected end of file"), "unreadable.cut-short"),
        Arguments.of(new IOException("Zip bomb detected!"), "too-large.unpacks"),
        Arguments.of(new IOException("Tried to allocate 2000000000"), "too-large.unpacks"),
        Arguments.of(new IOException("JAXP00010001"), "too-large.unpacks"),
        Arguments.of(new IOException("too many internal file entries"), "too-large.parts"),
        Arguments.of(new IndexOutOfBoundsException(), "unreadable.no-workbook"),
        Arguments.of(new NullPointerException(), "unreadable.no-workbook"));
  }

  @ParameterizedTest
  @MethodSource("thrown")
  void becomesAProblem(Exception thrown, String key) {
    Read<String> read =
        Guard.read(
            "yard.xlsx",
            () -> {
              throw thrown;
            });
    assertEquals(key, read.problems().get(0).said().key());
    assertEquals("yard.xlsx", read.problems().get(0).where().toString());
    assertEquals(true, read.value().isEmpty() && read.problems().size() == 1);
  }

  @Test
  void errorsOfTheMachineBecomeOneToo() {
    assertEquals("too-large.unpacks", key(new OutOfMemoryError("heap")));
    assertEquals("too-large.unpacks", key(new StackOverflowError()));
    assertEquals("unreadable.no-workbook", key(new NoClassDefFoundError("x")));
  }

  private static String key(Error thrown) {
    Read<String> read =
        Guard.read(
            "yard.xlsx",
            () -> {
              throw thrown;
            });
    return read.problems().get(0).said().key();
  }

  @Test
  void theProgramsOwnFaultsPassThrough() {
    IllegalStateException own = new IllegalStateException("ours");
    assertSame(
        own,
        assertThrows(
            IllegalStateException.class,
            () ->
                Guard.read(
                    "yard.xlsx",
                    () -> {
                      throw new Guard.Own(own);
                    })));
  }

  @Test
  void aStopIsItsOwnProblem() {
    assertEquals(
        ProblemCode.TOO_LARGE,
        Guard.read(
                "yard.xlsx",
                () -> {
                  throw Guard.over("cells", "yard.xlsx", 5);
                })
            .problems()
            .get(0)
            .code());
    assertEquals("read", Guard.read("yard.xlsx", () -> Read.of("read", List.of())).value().get());
  }
}
