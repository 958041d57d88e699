package roundbook.report.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.report.LivePlans;
import roundbook.sheet.LibreOffice;

/**
 * The whole crew workbook of each language and unit in one start of a spreadsheet program outside
 * the project.
 */
class LanguagesRecalculatedTest {
  @TempDir Path folder;

  @Test
  void storedValuesAreTheOnesItComputes() throws Exception {
    LibreOffice.assumePresent();
    List<Path> books = new ArrayList<>();
    for (String language : List.of("en", "de")) {
      for (String unit : List.of("in", "mm", "cm")) {
        books.add(written(language, unit));
      }
    }
    List<Path> after = LibreOffice.recalculateAll(books);
    for (int index = 0; index < after.size(); index++) {
      Path book = books.get(index);
      var found = LibreOffice.compare(book, after.get(index), LivePlans.NANOMETRES);
      assertEquals(List.of(), found.differences(), book.toString());
      assertTrue(found.formulas() > 500, book + ": " + found.formulas());
    }
  }

  private Path written(String language, String unit) throws Exception {
    PlanFixtures job = unit.equals("in") ? PlanFixtures.inches() : PlanFixtures.metric();
    Plan plan = job.set(Setting.LANGUAGE, language).set(Setting.UNITS, unit).withOpenings().plan(2);
    Path file = folder.resolve(language + " " + unit + ".xlsx");
    return LivePlans.written(file, CrewBook.of(LivePlans.context(plan)));
  }
}
