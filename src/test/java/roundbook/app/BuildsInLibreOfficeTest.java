package roundbook.app;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import roundbook.sheet.LibreOffice;

/** The same through workbooks that a spreadsheet program outside the project saved. */
@Tag("long")
class BuildsInLibreOfficeTest extends BuildsAgreeTest {
  @BeforeEach
  void present() {
    LibreOffice.assumePresent();
  }

  @Override
  Path saved(Path book, Map<String, ?> typed) throws Exception {
    return LibreOffice.recalculate(book, typed);
  }
}
