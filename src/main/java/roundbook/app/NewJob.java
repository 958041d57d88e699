package roundbook.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import roundbook.page.Book;
import roundbook.report.form.JobBook;
import roundbook.sheet.style.StyleTemplate;
import roundbook.sheet.write.BookWriter;
import roundbook.units.LengthUnit;

/** Writes the job workbook that a builder fills in. */
final class NewJob {
  private static final Set<LengthUnit> JOB_UNITS =
      Set.of(LengthUnit.INCH, LengthUnit.MILLIMETRE, LengthUnit.CENTIMETRE);

  private NewJob() {}

  static Exit write(Path file, boolean example, String units, Console console) throws IOException {
    LengthUnit unit = LengthUnit.ofSymbol(units).filter(JOB_UNITS::contains).orElse(null);
    if (unit == null) {
      console.fail("error: --units " + units + " is not in, mm or cm");
      return Exit.USAGE;
    }
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      console.fail("error: " + file + ": a job workbook is named .xlsx");
      return Exit.USAGE;
    }
    Book book = example ? JobBook.example(unit) : JobBook.blank(unit);
    StyleTemplate template = StyleTemplate.standard();
    SafeFile.write(file, false, out -> BookWriter.write(book, template, out), written -> {});
    console.result(file.toString());
    return Exit.DONE;
  }
}
