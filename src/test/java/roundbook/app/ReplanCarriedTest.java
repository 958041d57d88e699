package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was found when the tally was read is told in every later revision, in any language; only
 * middles still estimated are counted anew, by their logs.
 */
class ReplanCarriedTest {
  @TempDir private Path folder;

  @Test
  void whatWasFoundInTheTallyIsToldAgain() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(21, 2, 4);
    spoil();
    Path first = folder.resolve("first");
    site.plan("--rounds", "2", "--language", "de", "--tables", first.toString());
    TypedBook.type(site.book(1), Map.of("Language", "en"));
    assertEquals(0, site.replan(1), site.said());
    List<String> start = texts(site, 2, "Start");
    assertTrue(start.stream().anyMatch(text -> text.contains("looks like a date")));
    TypedBook.type(site.book(2), Map.of("Language", "de"));
    assertEquals(0, site.replan(2), site.said());
    Path third = folder.resolve("third");
    String[] again = {
      "replan", "--no-pictures", site.book(3).toString(), "--tables", third.toString()
    };
    assertEquals(0, site.run(again), site.said());
    List<String> before = found(first);
    assertTrue(before.size() >= 3, before.toString());
    List<String> after = found(third);
    assertEquals(without(before, "mid-estimated"), without(after, "mid-estimated"));
    assertEquals(before.size(), after.size(), after.toString());
    assertTrue(before.toString().contains("of 1 of 15 logs is missing"), before.toString());
    assertTrue(after.toString().contains("diameter of T4 is still estimated"), after.toString());
    assertTrue(texts(site, 4, "Start").stream().anyMatch(text -> text.contains("wie ein Datum")));
  }

  /** Makes one length a date, takes the middle from a log, and swaps the ends of another. */
  private void spoil() throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(folder.resolve("hut.csv")));
    String[] dated = lines.get(2).split(",");
    lines.set(2, String.join(",", dated[0], "6/24/2026", dated[2], dated[3], dated[4], dated[5]));
    String[] bare = lines.get(4).split(",");
    lines.set(4, String.join(",", bare[0], bare[1], bare[2], "", bare[4], bare[5]));
    String[] turned = lines.get(6).split(",");
    lines.set(6, String.join(",", turned[0], turned[1], "8", turned[3], "16", turned[5]));
    Files.write(folder.resolve("hut.csv"), lines);
  }

  /** Returns the rows of the problems found in the tally, without those of the plan. */
  private static List<String> found(Path tables) throws IOException {
    Path file;
    try (var files = Files.walk(tables)) {
      file = files.filter(each -> each.endsWith("problems.csv")).findFirst().orElseThrow();
    }
    return Files.readAllLines(file).stream()
        .filter(line -> line.startsWith("hut.csv"))
        .filter(line -> !line.contains("\"round ") && !line.contains(" on round "))
        .toList();
  }

  private static List<String> without(List<String> rows, String code) {
    return rows.stream().filter(row -> !row.contains("," + code + ",")).toList();
  }

  private static List<String> texts(CrewFolder site, int revision, String sheet) throws Exception {
    List<String> texts = new ArrayList<>();
    TypedBook.change(
        site.book(revision),
        book ->
            book.getSheet(sheet)
                .forEach(
                    row ->
                        row.forEach(cell -> texts.add(new DataFormatter().formatCellValue(cell)))));
    return texts;
  }
}
