package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.problem.words.Sentences;

/**
 * Sheets, rows and columns that somebody deleted from a crew workbook are missed aloud.
 *
 * <p>A deleted cell leaves its name in the file, standing for {@code #REF!} (from memory, of the
 * two spreadsheet programs most used) or for a sheet that is not there.
 */
class ReplanDeletedTest {
  @TempDir private Path folder;

  @Test
  void aListOfProblemsThatIsGoneIsSaidOnce() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(21, 2, 4);
    List<String> lines = new ArrayList<>(Files.readAllLines(folder.resolve("hut.csv")));
    lines.set(2, lines.get(2).replaceFirst(",[^,]*", ",6/24/2026"));
    Files.write(folder.resolve("hut.csv"), lines);
    site.plan("--rounds", "2");
    Files.copy(site.book(1), site.book(5));
    assertEquals(0, site.replan(1), site.said());
    assertFalse(site.said().contains("cell-lost"), site.said());
    TypedBook.change(site.book(5), book -> remove(book, "Problems"));
    assertEquals(0, site.replan(5), site.said());
    assertSaid(site, "warning cell-lost: the list of problems");
    String[] compare = {"compare", site.book(1).toString(), site.book(5).toString()};
    assertEquals(0, site.run(compare), site.said());
    assertSaid(site, "hut - rounds rev5.xlsx: warning cell-lost: the list of problems");
    site.run("compare", site.book(1).toString(), site.book(1).toString());
    assertFalse(site.said().contains("cell-lost"), site.said());
  }

  /** Without the record a cut round would be sized anew, and its marks with it. */
  @Test
  void withoutTheRecordOfWhatIsCutNothingIsWritten() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(21, 3, 4).plan("--rounds", "3");
    TypedBook.type(site.book(1), Map.of("Cut_1", "x"));
    assertEquals(0, site.replan(1), site.said());
    TypedBook.change(site.book(2), book -> remove(book, "As built"));
    assertEquals(3, site.replan(2), site.said());
    assertSaid(site, "error cell-lost: the sheet As built");
    assertFalse(Files.exists(site.book(3)));
  }

  @Test
  void columnsAndRowsThatAreGoneAreSaid() throws Exception {
    CrewFolder site = new CrewFolder(folder);
    String[] plan = {"plan", "samples/hill-cabin.xlsx", "--no-pictures", "-o", folder.toString()};
    assertEquals(0, site.run(plan), site.said());
    Path whole = folder.resolve("hill-cabin - rounds rev1.xlsx");
    int openings =
        CrewSource.read(whole, roundbook.intake.Asked.NOTHING)
            .value()
            .orElseThrow()
            .job()
            .openings()
            .size();
    assertTrue(openings > 1);
    Path edited = folder.resolve("edited.xlsx");
    Files.copy(whole, edited);
    TypedBook.change(
        edited,
        book -> {
          lose(book, "Opening_1_");
          lose(book, "Log_remarks");
        });
    var read = CrewSource.read(edited, roundbook.intake.Asked.NOTHING);
    assertEquals(openings - 1, read.value().orElseThrow().job().openings().size());
    List<String> said = read.problems().stream().map(Sentences.english()::message).toList();
    assertTrue(said.stream().anyMatch(line -> line.contains("rows of the openings are gone")));
    assertTrue(said.stream().anyMatch(line -> line.contains("columns of the log list are gone")));
    assertTrue(said.stream().noneMatch(line -> line.contains("pins")), said.toString());
    TypedBook.change(edited, book -> lose(book, "Log_thickness"));
    List<String> again =
        CrewSource.read(edited, roundbook.intake.Asked.NOTHING).problems().stream()
            .map(Sentences.english()::message)
            .toList();
    assertTrue(again.stream().anyMatch(line -> line.contains("the cell Log_thickness is gone")));
  }

  private static void assertSaid(CrewFolder site, String words) {
    long lines = site.said().lines().filter(line -> line.contains(words)).count();
    assertEquals(1, lines, site.said());
  }

  private static void remove(XSSFWorkbook book, String sheet) {
    book.removeSheetAt(book.getSheetIndex(sheet));
  }

  /** Leaves names as they are left when their rows or columns are deleted. */
  private static void lose(XSSFWorkbook book, String start) {
    Consumer<Name> lost =
        name -> name.setRefersToFormula(name.getRefersToFormula().replaceFirst("!.*", "!#REF!"));
    List.copyOf(book.getAllNames()).stream()
        .filter(name -> name.getNameName().startsWith(start))
        .forEach(lost);
  }
}
