package roundbook.report.live;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import roundbook.sheet.LibreOffice;

/** The same in a spreadsheet program outside the project. */
@Tag("long")
class ReplanAdviceInLibreOfficeTest extends ReplanAdviceRecalculatedTest {
  @BeforeEach
  void present() {
    LibreOffice.assumePresent();
  }

  @Override
  Path recalculated(Path book, Map<String, ?> typed) throws Exception {
    return LibreOffice.recalculate(book, typed);
  }
}
