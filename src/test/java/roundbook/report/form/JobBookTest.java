package roundbook.report.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.page.Book;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.problem.words.Sentences;
import roundbook.report.ListFixtures;
import roundbook.units.LengthUnit;

/** The blank job workbook and its invented example. */
class JobBookTest {
  private static Sheet sheet(Book book, String name) {
    return book.sheets().stream()
        .filter(sheet -> sheet.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void itHasTheSheetsOfAJob() {
    List<String> names = JobBook.blank(LengthUnit.INCH).sheets().stream().map(Sheet::name).toList();
    assertEquals(
        List.of("Job", "Walls", "Logs", "Stems", "Prices", "Openings", "Pins", "Other_logs"),
        names);
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void everySettingHasANamedCellWithItsMeaning(Setting setting) {
    Sheet job = sheet(JobBook.blank(LengthUnit.INCH), "Job");
    Cell cell = ListFixtures.named(job, setting.label()).orElseThrow();
    assertEquals(Role.TYPED_IN_TEXT, cell.role());
    List<String> row = ListFixtures.row(job, setting.ordinal() + 2);
    assertEquals(setting.label(), row.get(0));
    assertEquals("", row.get(1));
    assertEquals(setting.kind() == SettingKind.LENGTH ? "in" : "", row.get(2));
    assertEquals(setting.meaning().in(Sentences.english()), row.get(3));
    assertEquals(setting.standard(false), row.get(4));
  }

  /** A meaning of two lines in a row of one is struck through by the rows above and below. */
  @Test
  void aMeaningOfTwoLinesHasTheRoomOfTwo() {
    Sheet job = sheet(JobBook.blank(LengthUnit.INCH), "Job");
    assertTrue(job.heights().get(Setting.HOLD_HEIGHT.ordinal() + 2) >= 30);
    assertFalse(job.heights().containsKey(Setting.ROUNDS.ordinal() + 2));
  }

  @Test
  void choicesAreOfferedAsLists() {
    Sheet job = sheet(JobBook.blank(LengthUnit.INCH), "Job");
    List<List<String>> offered =
        job.rules().stream().map(rule -> ((Rule.OneOf) rule).choices()).toList();
    List<List<String>> choices =
        Stream.of(Setting.values())
            .filter(setting -> setting.kind() == SettingKind.CHOICE)
            .map(Setting::choices)
            .toList();
    assertEquals(choices, offered);
    assertTrue(choices.stream().noneMatch(List::isEmpty));
  }

  @Test
  void aMetricJobSaysSo() {
    Sheet job = sheet(JobBook.blank(LengthUnit.MILLIMETRE), "Job");
    assertEquals("mm", ListFixtures.shown(ListFixtures.named(job, "Units").orElseThrow()));
    assertEquals("150", ListFixtures.row(job, Setting.LOG_THICKNESS.ordinal() + 2).get(4));
    Sheet centimetres = sheet(JobBook.blank(LengthUnit.CENTIMETRE), "Job");
    assertEquals("15", ListFixtures.row(centimetres, Setting.LOG_THICKNESS.ordinal() + 2).get(4));
  }

  @Test
  void headingsSayTheUnit() {
    assertEquals(
        "Length (ft)", ListFixtures.row(sheet(JobBook.blank(LengthUnit.INCH), "Logs"), 1).get(1));
    assertEquals(
        "Butt (mm)",
        ListFixtures.row(sheet(JobBook.blank(LengthUnit.MILLIMETRE), "Logs"), 1).get(2));
  }

  @Test
  void lengthsAreTypedAsTextSoThatNoFractionBecomesADate() {
    for (LengthUnit unit : List.of(LengthUnit.INCH, LengthUnit.CENTIMETRE)) {
      for (Sheet sheet : JobBook.example(unit).sheets()) {
        sheet.rows().tailMap(2).values().stream()
            .flatMap(row -> row.values().stream())
            .filter(cell -> cell.role() == Role.TYPED_IN_TEXT)
            .forEach(cell -> assertFalse(cell.value() instanceof Cell.Number, sheet.name()));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = LengthUnit.class,
      names = {"INCH", "MILLIMETRE", "CENTIMETRE"})
  void theExampleIsFilled(LengthUnit unit) {
    Book book = JobBook.example(unit);
    Sheet logs = sheet(book, "Logs");
    List<String> first = ListFixtures.row(logs, 2);
    assertEquals("1", first.get(0));
    assertFalse(first.get(1).isEmpty());
    assertEquals("", ListFixtures.row(logs, 13).get(3), "one middle is not measured");
    assertEquals("x", ListFixtures.row(logs, 32).get(13), "one log is left out");
    assertEquals("Door", ListFixtures.row(sheet(book, "Openings"), 2).get(0));
    assertEquals("S", ListFixtures.row(sheet(book, "Pins"), 2).get(1));
  }
}
