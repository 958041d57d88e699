package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several jobs from one pile: no log twice, the first named first, whatever fails. */
class YardTest {
  private static final String HEADER = "Log,Length ft,Butt in,Mid in,Tip in\n";

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private Path house;
  private Path cabin;
  private Path yard;

  @BeforeEach
  void twoJobsAndAYard() throws IOException {
    house = job("house", Map.of("Rounds", "3"), 18);
    cabin = job("cabin", Map.of("Rounds", "2"), 18);
    yard = Files.writeString(folder.resolve("yard.csv"), HEADER + logs("Y", 1, 22));
  }

  @Test
  void noLogIsUsedTwiceAndEachSaysWhatTheOtherTook() throws IOException {
    assertEquals(0, plan(house, cabin), err());
    Set<String> placed = new HashSet<>();
    int places = 0;
    for (String name : List.of("house.xlsx", "cabin.xlsx")) {
      for (List<String> row : table(name, "pieces")) {
        assertTrue(placed.add(row.get(2)), row.get(2) + " stands in two houses");
        places++;
      }
    }
    assertEquals(20, places);
    assertEquals(12, uses("cabin.xlsx", "taken"));
    assertEquals(8, uses("house.xlsx", "taken"));
    assertEquals(2, uses("house.xlsx", "spare"), "the spares are everyone's");
    assertEquals(2, uses("cabin.xlsx", "spare"));
    List<String> taken = row("cabin.xlsx", "taken");
    assertTrue(taken.get(13).matches("house.xlsx: round [123] wall [NESW]"), taken::toString);
    assertTrue(err().contains("cabin.xlsx: 8 logs used, 2 spare, 0 left out, 12 taken by other"));
  }

  /** A felled stem of the yard is one job's, with all its pieces. */
  @Test
  void noStemIsCutForTwoJobs() throws IOException {
    StringBuilder stems = new StringBuilder("stem,length,0 ft,1 ft,2 ft,4 ft");
    for (int foot = 8; foot <= 40; foot += 4) {
      stems.append(",").append(foot).append(" ft");
    }
    for (int stem = 1; stem <= 24; stem++) {
      stems.append("\nT").append(stem).append("_,40 ft,18,17,16.25,15.75");
      for (int foot = 8; foot <= 40; foot += 4) {
        stems.append(",").append(16 - foot * 0.1 - stem % 3 * 0.25);
      }
    }
    Files.writeString(yard, stems + "\n");
    assertEquals(0, plan(house, cabin), err());
    Set<String> first = stems("house.xlsx");
    Set<String> second = stems("cabin.xlsx");
    assertTrue(first.size() >= 6 && second.size() >= 4, first + " " + second);
    assertTrue(second.stream().noneMatch(first::contains), first + " " + second);
  }

  private Set<String> stems(String job) throws IOException {
    Set<String> stems = new HashSet<>();
    table(job, "pieces").forEach(row -> stems.add(row.get(2).replaceAll("_.*", "")));
    return stems;
  }

  /** The job named first has what it wants, and the other what is left. */
  @Test
  void theOrderOfTheJobsIsTheOrderOfPriority() throws IOException {
    Files.writeString(yard, HEADER + logs("Y", 1, 16));
    assertEquals(4, plan(house, cabin), err());
    assertEquals(12, table("house.xlsx", "pieces").size());
    assertEquals(4, table("cabin.xlsx", "pieces").size());
    int missing =
        table("cabin.xlsx", "order").stream()
            .filter(row -> row.get(5).equals("needed"))
            .mapToInt(row -> Integer.parseInt(row.get(0)))
            .sum();
    assertEquals(4, missing, "one round is missing");
    assertEquals(4, plan(cabin, house), err());
    assertEquals(8, table("cabin.xlsx", "pieces").size());
    assertEquals(8, table("house.xlsx", "pieces").size());
  }

  @Test
  void anyNumberAtOnceGivesTheSameBooks() throws IOException {
    plan(house, cabin);
    List<Path> one = books();
    List<byte[]> bytes = new ArrayList<>();
    for (Path book : one) {
      bytes.add(Files.readAllBytes(book));
      Files.delete(book);
    }
    String said = err();
    err.reset();
    plan(house, cabin, "-j", "3");
    assertEquals(said, err());
    assertEquals(one, books());
    for (int i = 0; i < one.size(); i++) {
      assertArrayEquals(bytes.get(i), Files.readAllBytes(one.get(i)));
    }
  }

  @Test
  void aJobThatFailsLeavesItsLogsToTheNext() throws IOException {
    Path broken = job("broken", Map.of("Rounds", "9", "Log_thickness", "six"), 18);
    Path big = job("big", Map.of("Rounds", "9"), 60);
    assertEquals(3, plan(broken, big, house, cabin), err());
    assertEquals(12, table("house.xlsx", "pieces").size());
    assertEquals(8, table("cabin.xlsx", "pieces").size());
    assertEquals(8, uses("house.xlsx", "taken"), "nothing but what the cabin has");
    assertEquals(2, books().size());
  }

  /** What could not be written takes no log. */
  @Test
  void anOutputThatCannotBeWrittenFailsBeforeAnyLogIsTaken() throws IOException {
    Path nowhere = Files.createFile(folder.resolve("no-folder")).resolve("book.xlsx");
    int exit = run("plan", house.toString(), "--yard", yard.toString(), "-o", nowhere.toString());
    assertEquals(5, exit, err());
    assertTrue(err().contains("cannot write"), err());
  }

  @Test
  void aYardThatIsNotThereFailsEveryJob() throws IOException {
    Files.delete(yard);
    assertEquals(5, plan(house, cabin));
    assertTrue(err().contains("yard.csv: error unreadable"), err());
    assertEquals(List.of(), books());
  }

  @Test
  void tagsThatTwoPilesShareAreKeptApart() throws IOException {
    Files.writeString(yard, HEADER + logs("", 1, 12));
    Path more = Files.writeString(folder.resolve("more.csv"), HEADER + logs("", 1, 10));
    assertEquals(0, plan(house, cabin, "--yard", more.toString()), err());
    assertTrue(err().contains("duplicate-id"), err());
    Set<String> placed = new HashSet<>();
    for (String name : List.of("house.xlsx", "cabin.xlsx")) {
      table(name, "pieces").forEach(row -> assertTrue(placed.add(row.get(2)), row::toString));
    }
    assertEquals(20, placed.size());
  }

  /** A job's own tally is its own; its tags may be those of the yard. */
  @Test
  void aJobsOwnLogsAreNotTheYards() throws IOException {
    Path own = Files.writeString(folder.resolve("own.csv"), HEADER + logs("Y", 1, 8));
    int exit = plan(own, house, "--walls", "18x18", "--rounds", "3");
    assertEquals(0, exit, err());
    assertEquals(12, table("own.csv", "pieces").size());
    long fromYard =
        table("own.csv", "logs").stream()
            .filter(row -> row.get(0).equals("yard.csv") && row.get(10).equals("placed"))
            .count();
    assertEquals(fromYard, uses("house.xlsx", "taken"));
    assertEquals(22, table("house.xlsx", "logs").size(), "the other's own logs are not offered");
  }

  @Test
  void aRowThatStandsForSeveralLogsIsSharedLogByLog() throws IOException {
    Files.writeString(yard, "Log,Count,Length ft,Butt in,Mid in,Tip in\nP,22,24,14.5,13,12\n");
    assertEquals(0, plan(house, cabin), err());
    Set<String> placed = new HashSet<>();
    for (String name : List.of("house.xlsx", "cabin.xlsx")) {
      table(name, "pieces").forEach(row -> assertTrue(placed.add(row.get(2)), row::toString));
    }
    assertEquals(20, placed.size());
  }

  @Test
  void aJobThatWouldTakeAllIsWarnedOf() throws IOException {
    Path all = job("all", Map.of(), 18);
    assertEquals(4, plan(all, house), err());
    assertTrue(err().contains("all.xlsx: warning takes-all"), err());
    err.reset();
    assertEquals(0, plan(house, all), err());
    assertFalse(err().contains("takes-all"), "the last may take the rest");
  }

  /** A workbook made from a shared yard is none of the same file planned alone. */
  @Test
  void whatASharedYardMadeIsNotGoneOnWithAlone() throws IOException {
    Path own = Files.writeString(folder.resolve("own.csv"), HEADER + logs("Z", 1, 8));
    String[] walls = {"--walls", "18x18", "--rounds", "2"};
    assertEquals(0, plan(own, walls[0], walls[1], walls[2], walls[3]), err());
    err.reset();
    String[] alone = {"plan", own.toString(), "--no-pictures", "--resume"};
    List<String> words = new ArrayList<>(List.of(alone));
    words.addAll(List.of(walls));
    assertEquals(0, run(words.toArray(new String[0])), err());
    assertFalse(err().contains("planned before"), err());
  }

  @Test
  void theYardItselfIsNoJobOfAFolder() throws IOException {
    assertEquals(0, run("plan", folder.toString(), "--yard", yard.toString()), err());
    assertEquals(2, books().size());
  }

  @Test
  void twoFilesOfOneNameAreRefused() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other")).resolve("yard.csv");
    Files.copy(yard, other);
    assertEquals(2, plan(house, cabin, "--yard", other.toString()));
    assertTrue(err().contains("both named yard.csv"), err());
  }

  private int plan(Object... words) {
    List<String> all = new ArrayList<>(List.of("plan", "--no-pictures"));
    Stream.of(words).map(String::valueOf).forEach(all::add);
    all.addAll(List.of("--yard", yard.toString(), "--tables", folder.resolve("t").toString()));
    return run(all.toArray(new String[0]));
  }

  private List<List<String>> table(String job, String name) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("t/" + job + "/" + name + ".csv"));
    return lines.stream().skip(1).map(line -> List.of(line.split(",", -1))).toList();
  }

  private long uses(String job, String use) throws IOException {
    return table(job, "logs").stream().filter(row -> row.get(10).equals(use)).count();
  }

  private List<String> row(String job, String use) throws IOException {
    return table(job, "logs").stream()
        .filter(row -> row.get(10).equals(use))
        .findFirst()
        .orElseThrow();
  }

  private List<Path> books() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().contains(" - rounds rev")).sorted().toList();
    }
  }

  private static String logs(String letter, int from, int to) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i <= to; i++) {
      text.append(letter).append(i).append(",24,").append(13.5 + i % 4 / 4.0).append(",13,12\n");
    }
    return text.toString();
  }

  /** Writes a job workbook without any log: its settings and four walls of one length. */
  private Path job(String name, Map<String, String> settings, int feet) throws IOException {
    Path file = folder.resolve(name + ".xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream to = Files.newOutputStream(file)) {
      Sheet job = book.createSheet("Job");
      row(job, "Name", "Value");
      settings.forEach((key, value) -> row(job, key, value));
      Sheet walls = book.createSheet("Walls");
      row(walls, "Wall", "Outside length", "Laid first");
      for (String wall : List.of("N", "E", "S", "W")) {
        row(walls, wall, feet + "' 0\"", "NS".contains(wall) ? "x" : "");
      }
      book.write(to);
    }
    return file;
  }

  private static void row(Sheet sheet, String... values) {
    Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
    for (int column = 0; column < values.length; column++) {
      row.createCell(column).setCellValue(values[column]);
    }
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private int run(String... args) {
    return Quick.run(
        args,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }
}
