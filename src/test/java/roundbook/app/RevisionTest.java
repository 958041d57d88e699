package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Revisions are numbered over the highest that is there. */
class RevisionTest {
  @TempDir private Path folder;

  private Path book(String name) throws IOException {
    return Files.createFile(folder.resolve(name));
  }

  @Test
  void aHoleAmongRevisionsIsNotFilled() throws IOException {
    Path first = book("hut - rounds rev1.xlsx");
    book("hut - rounds rev3.xlsx");
    book("hut - order rev7.xlsx");
    book("hut two - rounds rev9.xlsx");
    book("hut - rounds rev4.xlsx.part");
    assertEquals(4, Revision.after(1, first, null).firstFree());
    assertEquals(4, Revision.of(folder.resolve("hut.csv"), null).firstFree());
    assertEquals(3, Revision.of(folder.resolve("hut.csv"), null).highest());
    assertEquals(8, Revision.of(folder.resolve("hut.csv"), null).ofOrder().firstFree());
    assertEquals(1, Revision.of(folder.resolve("barn.csv"), null).firstFree());
    assertEquals(5, Revision.after(4, first, folder.resolve("none")).firstFree());
  }
}
