package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.intake.Asked;
import roundbook.plan.Plan;
import roundbook.replan.Replanner;

/** The pages to print again are those that a crew works by and that print otherwise. */
class ReplanPagesTest {
  @TempDir private static Path folder;
  private static String said;
  private static String header;

  @BeforeAll
  static void loseAHeader() throws Exception {
    run("plan", "samples/hill-cabin.xlsx", "-o", folder.toString(), "-q");
    Plan plan =
        Replanner.printed(CrewSource.read(book(1), Asked.NOTHING).value().orElseThrow())
            .value()
            .orElseThrow();
    var log =
        plan.takeoff().openings().stream()
            .filter(cut -> cut.header().isPresent())
            .findFirst()
            .orElseThrow()
            .header()
            .orElseThrow()
            .first()
            .piece()
            .log();
    header = log.tag();
    TypedBook.type(book(1), Map.of("Lost_" + log.origin().row(), "x"));
    said = run("replan", book(1).toString());
  }

  private static String run(String... args) {
    CrewFolder crew = new CrewFolder(folder);
    assertTrue(List.of(0, 4).contains(crew.run(args)), crew.said());
    return crew.said();
  }

  private static Path book(int revision) {
    return folder.resolve("hill-cabin - rounds rev" + revision + ".xlsx");
  }

  @Test
  void onlyPagesThatACrewWorksByAreNamed() throws Exception {
    Map<String, List<String>> was = printed(book(1));
    Map<String, List<String>> now = printed(book(2));
    TreeSet<String> named = named(said);
    assertTrue(named.contains("Start"), named.toString());
    for (String name : named) {
      String sheet = name.replaceFirst("^Tags .*", "Tags");
      assertTrue(!now.get(sheet).equals(was.get(sheet)), name + " prints as before");
      assertTrue(sheet.matches("Start|Notch chart|Round \\d\\d|Wall .|Openings|Tags"), name);
    }
    assertEquals(named, named(run("compare", book(1).toString(), book(2).toString())));
  }

  @Test
  void theRoundOfTheLostHeaderIsNamedWithItsTag() throws Exception {
    Plan was =
        Replanner.printed(CrewSource.read(book(1), Asked.NOTHING).value().orElseThrow())
            .value()
            .orElseThrow();
    var place =
        was.uses().stream()
            .filter(use -> use.log().tag().equals(header))
            .findFirst()
            .flatMap(use -> use.placed())
            .orElseThrow();
    TreeSet<String> named = named(said);
    assertTrue(named.contains("Round 0" + place.round()), named.toString());
    assertTrue(named.contains("Wall " + place.wall().name()), named.toString());
    String tag = place.round() + place.wall().name();
    assertTrue(named.stream().anyMatch(name -> name.matches("Tags .*\\b" + tag + "\\b.*")), said);
  }

  @Test
  void anotherHeaderIsToldOf() {
    String told = run("compare", book(1).toString(), book(2).toString());
    assertTrue(told.matches("(?s).*Header log over [^:]+: " + header + " → \\S+.*"), told);
  }

  @Test
  void pagesThatAreNotNamedStayGood() throws Exception {
    String start = String.join("\n", printed(book(2)).get("Start"));
    assertTrue(start.contains("Pages that are not named stay good to cut and lay by"), start);
    assertTrue(!start.contains("Pages of any other revision are void"), start);
  }

  private static TreeSet<String> named(String lines) {
    String pages = "Print these pages again: ";
    String line = lines.lines().filter(each -> each.startsWith(pages)).findFirst().orElse(lines);
    return new TreeSet<>(
        List.of(line.substring(pages.length()).replaceAll("\\. .*$", "").split(", ")));
  }

  /** Returns what the cells of each sheet's print area show, but for the revision. */
  private static Map<String, List<String>> printed(Path file) throws Exception {
    Map<String, List<String>> sheets = new TreeMap<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (int index = 0; index < book.getNumberOfSheets(); index++) {
        if (!book.isSheetHidden(index)) {
          Sheet sheet = book.getSheetAt(index);
          sheets.put(sheet.getSheetName(), cells(sheet, book.getPrintArea(index)));
        }
      }
    }
    return sheets;
  }

  private static List<String> cells(Sheet sheet, String area) {
    DataFormatter shown = new DataFormatter();
    shown.setUseCachedValuesForFormulaCells(true);
    CellRangeAddress range =
        CellRangeAddress.valueOf(area == null ? "A1:AZ900" : area.replaceFirst(".*!", ""));
    List<String> cells = new ArrayList<>();
    sheet.forEach(
        row ->
            row.forEach(
                cell -> {
                  String text = shown.formatCellValue(cell);
                  boolean box = sheet.getSheetName().equals("Log list") && text.equals("x");
                  if (range.isInRange(cell) && !text.matches("REV \\d+|") && !box) {
                    cells.add(cell.getAddress() + " " + text);
                  }
                }));
    return cells;
  }
}
