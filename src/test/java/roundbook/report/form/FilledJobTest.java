package roundbook.report.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.intake.JobReader.Findings;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.OtherLog;
import roundbook.job.Pin;
import roundbook.job.Price;
import roundbook.job.Setting;
import roundbook.page.Book;
import roundbook.plan.PlanFixtures;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.read.BookReader;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;
import roundbook.units.Length;

/** A job written to be filled in is read back as it was, whatever language its headings are in. */
class FilledJobTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({"en, Outside length", "de, Au\u00DFenl\u00E4nge"})
  void everySheetIsReadBackAsItWasWritten(String language, String heading) throws IOException {
    Job job = job(language);
    Path file = written(job);
    assertEquals(heading, text(file, "Walls", 0, 1));
    Job read = read(file).value().orElseThrow().job().orElseThrow();
    assertEquals(
        job.building().walls().toString().replaceAll("remarks=[^]]*", ""),
        read.building().walls().toString().replaceAll("remarks=[^]]*", ""));
    assertEquals(job.openings().size(), read.openings().size());
    for (int at = 0; at < job.openings().size(); at++) {
      assertEquals(job.openings().get(at).left(), read.openings().get(at).left());
      assertEquals(job.openings().get(at).width(), read.openings().get(at).width());
      assertEquals(job.openings().get(at).sill(), read.openings().get(at).sill());
      assertEquals(job.openings().get(at).head(), read.openings().get(at).head());
      assertEquals(job.openings().get(at).wall(), read.openings().get(at).wall());
    }
    assertEquals(1, read.pins().size());
    assertEquals("2 N NE", round(read.pins().get(0)));
    assertEquals(job.prices(), read.prices());
    OtherLog wanted = job.others().get(0);
    OtherLog other = read.others().get(0);
    assertEquals(wanted.name() + wanted.count(), other.name() + other.count());
    assertEquals(wanted.length(), other.length());
    assertEquals(wanted.mid(), other.mid());
    assertEquals(wanted.tip(), other.tip());
    assertEquals(wanted.sweep(), other.sweep());
  }

  /** What is typed under German headings is read as under English ones, and no column is left. */
  @Test
  void aTallyTypedUnderGermanHeadingsIsReadWhole() throws IOException {
    Path english = typed("en");
    Path german = typed("de");
    assertNotEquals(text(english, "Logs", 0, 2), text(german, "Logs", 0, 2));
    Log one = read(english).value().orElseThrow().logs().get(0);
    Log other = read(german).value().orElseThrow().logs().get(0);
    assertEquals(one, other);
    assertEquals(Log.Keep.SILL, other.traits().keep());
    assertEquals("E", other.place().wall());
    assertEquals(OptionalInt.of(1), other.place().round());
    List<Problem> unread =
        read(german).problems().stream()
            .filter(each -> each.code() == ProblemCode.COLUMN_NOT_READ)
            .toList();
    assertEquals(List.of(), unread);
  }

  private Path typed(String language) throws IOException {
    Path file = written(job(language).withLogs(List.of()));
    Path filled = folder.resolve(language + "-filled.xlsx");
    String[] cells = {
      "A1",
      "24' 6\"",
      "15",
      "13 1/2",
      "12",
      "12",
      "butt log",
      "spruce",
      "off",
      "1/2",
      "sill",
      "E",
      "1",
      "",
      "sound"
    };
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file));
        OutputStream out = Files.newOutputStream(filled)) {
      for (int column = 0; column < cells.length; column++) {
        book.getSheet("Logs").getRow(1).getCell(column).setCellValue(cells[column]);
      }
      book.write(out);
    }
    Path same = folder.resolve(language).resolve("job.xlsx");
    Files.createDirectories(same.getParent());
    return Files.copy(filled, same);
  }

  private static String round(Pin pin) {
    return pin.round().getAsInt() + " " + pin.wall() + " " + pin.buttAt();
  }

  private static String text(Path file, String name, int row, int column) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      Sheet sheet = book.getSheet(name);
      return sheet.getRow(row).getCell(column).getStringCellValue();
    }
  }

  private Path written(Job job) throws IOException {
    Path file = folder.resolve(job.rules().text(Setting.LANGUAGE) + ".xlsx");
    Book book = Book.of(Book.Properties.titled("job"), JobBook.filled(job));
    try (OutputStream out = Files.newOutputStream(file)) {
      BookWriter.write(book, StyleTemplate.standard(), out);
    }
    return file;
  }

  private static Read<Findings> read(Path file) {
    return JobReader.read(BookReader.read("job.xlsx", file).value().orElseThrow(), Asked.NOTHING);
  }

  private static Job job(String language) {
    Job job = PlanFixtures.inches().withOpenings().plan(1).job();
    Price price =
        new Price(
            Price.Basis.DOYLE,
            new BigDecimal("0.62"),
            Set.of(1, 3),
            Optional.of(new BigDecimal("75")));
    OtherLog joist =
        new OtherLog(
            "joist",
            6,
            Length.ofInches(216),
            Length.ofInchFraction(21, 2),
            Length.ofInches(8),
            Optional.of(Length.ofInches(1)),
            "",
            CellRef.ofFile(""));
    Pin pin = new Pin(OptionalInt.of(2), "N", "", "NE", "it looks well", CellRef.ofFile(""));
    return new Job(
            job.rules().with(Setting.LANGUAGE, language, Origin.OPTION),
            job.building(),
            List.of(),
            job.openings(),
            List.of(pin))
        .withPrices(List.of(price))
        .withOthers(List.of(joist));
  }
}
