package roundbook.sheet.style;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Value;
import roundbook.sheet.write.BookWriterTest;

class StyleTemplateTest {
  private static final Path CARRIED = Path.of("templates", "crew-style.xlsx");
  private static final byte[] STANDARD = standard();

  /** Writes the template that the project carries; run after a role or a look has changed. */
  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(CARRIED.getParent());
    Files.write(CARRIED, STANDARD);
  }

  private static byte[] standard() {
    try {
      return BookWriterTest.written(StyleTemplate.standard().toBook());
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
  }

  private static byte[] changed(Consumer<XSSFWorkbook> change) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(STANDARD))) {
      change.accept(workbook);
      workbook.write(out);
    }
    return out.toByteArray();
  }

  private static XSSFCell sample(XSSFWorkbook workbook, Role role) {
    return workbook.getSheet("Styles").getRow(role.ordinal() + 1).getCell(1);
  }

  @Test
  void theTemplateThatTheProjectCarriesIsTheBuiltInOne() throws IOException {
    assertArrayEquals(
        STANDARD,
        Files.readAllBytes(CARRIED),
        "run the main method of this test to write the template again");
  }

  @ParameterizedTest
  @EnumSource(Role.class)
  void everyRoleComesBackAsItWas(Role role) {
    Read<StyleTemplate> read = StyleTemplate.read(STANDARD, "crew-style.xlsx");
    assertEquals(List.of(), read.problems());
    assertEquals(StyleTemplate.standard().look(role), read.value().orElseThrow().look(role));
  }

  @ParameterizedTest
  @EnumSource(Cell.Format.class)
  void everyFormatComesBackAsItWas(Cell.Format format) {
    StyleTemplate read = StyleTemplate.read(STANDARD, "crew-style.xlsx").value().orElseThrow();
    assertEquals(StyleTemplate.standard().format(format), read.format(format));
  }

  @ParameterizedTest
  @EnumSource(PageKind.class)
  void everyPageComesBackAsItWas(PageKind kind) {
    StyleTemplate read = StyleTemplate.read(STANDARD, "crew-style.xlsx").value().orElseThrow();
    assertEquals(StyleTemplate.standard().margins(kind), read.margins(kind));
  }

  @Test
  void aCrewsOwnLooksAreTaken() throws IOException {
    byte[] own =
        changed(
            workbook -> {
              XSSFFont font = workbook.createFont();
              font.setFontName("Courier New");
              font.setFontHeight(33);
              XSSFCellStyle style = workbook.createCellStyle();
              style.setFont(font);
              style.setLocked(false);
              sample(workbook, Role.TITLE).setCellStyle(style);
              workbook.getSheet("Page SITE").setMargin(PageMargin.LEFT, 1.5);
            });
    StyleTemplate read = StyleTemplate.read(own, "own.xlsx").value().orElseThrow();
    assertEquals("Courier New", read.look(Role.TITLE).font().name());
    assertEquals(33, read.look(Role.TITLE).font().size());
    assertTrue(read.look(Role.TITLE).unlocked());
    assertEquals(StyleTemplate.standard().look(Role.MARK), read.look(Role.MARK));
    assertEquals(1.5, read.margins(PageKind.SITE).left());
  }

  @Test
  void aRoleThatIsMissingFallsBackAndIsReported() throws IOException {
    byte[] own =
        changed(
            workbook -> {
              workbook.removeName(workbook.getName("Style_FLAG"));
              workbook.getName("Style_MARK").setRefersToFormula("Styles!$Z$999");
            });
    Read<StyleTemplate> read = StyleTemplate.read(own, "own.xlsx");
    assertEquals(
        List.of(Value.text("Style_MARK"), Value.text("Style_FLAG")),
        read.problems().stream().map(Problem::found).toList());
    assertEquals(ProblemCode.STYLE_MISSING, read.problems().get(0).code());
    StyleTemplate template = read.value().orElseThrow();
    assertEquals(StyleTemplate.standard().look(Role.FLAG), template.look(Role.FLAG));
  }

  @Test
  void whatIsNoWorkbookIsOneProblem() {
    Read<StyleTemplate> read =
        StyleTemplate.read("role,font\n".getBytes(StandardCharsets.UTF_8), "own.csv");
    assertTrue(read.value().isEmpty());
    assertEquals(ProblemCode.NOT_A_WORKBOOK, read.problems().get(0).code());
    assertEquals("own.csv", read.problems().get(0).where().file());
  }

  /** Contrast of at least 7 : 1, the published success criterion 1.4.6 of WCAG 2.1. */
  @ParameterizedTest
  @EnumSource(Role.class)
  void everyRoleCanBeReadByTiredEyes(Role role) {
    Look look = StyleTemplate.standard().look(role);
    String ground = look.ground().colour().isEmpty() ? Look.WHITE : look.ground().colour();
    if (role == Role.WASTE) {
      ground = look.ground().behind();
    }
    double one = luminance(look.font().colour());
    double two = luminance(ground);
    double contrast = (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
    assertTrue(contrast >= 7, role + " has a contrast of " + contrast);
  }

  /** Relative luminance as WCAG 2.1 defines it. */
  private static double luminance(String hex) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int part = 0; part < 3; part++) {
      double share = Integer.parseInt(hex.substring(2 * part, 2 * part + 2), 16) / 255.0;
      double linear = share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
      sum += weights[part] * linear;
    }
    return sum;
  }
}
