package roundbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the program to its architecture, and the checks themselves to planted breaches. */
class ArchitectureTest {
  @TempDir private Path folder;

  @Test
  void theByteCodeKeepsTheRules() {
    assertEquals(List.of(), ByteCodeRules.breaches(Breach.programClasses()));
  }

  @Test
  void thePackagesKeepTheRows() {
    assertEquals(List.of(), PackageGraph.breaches(Breach.programClasses()));
  }

  @Test
  void everyPackageWithClassesWasLookedAt() throws IOException {
    Set<String> seen =
        PackageGraph.uses(Breach.programClasses()).stream()
            .map(PackageGraph.Use::from)
            .collect(Collectors.toSet());
    assertEquals(packagesWithClasses(Breach.programClasses()), seen);
  }

  @Test
  void noRowAllowsARoomThatItDoesNotUse() {
    Map<String, Set<String>> used =
        PackageGraph.uses(Breach.programClasses()).stream()
            .collect(
                Collectors.groupingBy(
                    PackageGraph.Use::from,
                    Collectors.mapping(PackageGraph.Use::to, Collectors.toSet())));
    List<String> idle =
        Room.all().stream()
            .flatMap(room -> room.idle(used.getOrDefault(room.packageName(), Set.of())))
            .sorted()
            .toList();
    assertEquals(List.of(), idle);
  }

  @Test
  void noTwoRowsAllowEachOther() {
    for (Room room : Room.all()) {
      assertFalse(reaches(room, room.name()), () -> room.name() + " comes back to itself");
    }
  }

  @Test
  void noRoomHoldsAKnotOfManyClasses() {
    assertEquals(List.of(), Knots.larger(Breach.programClasses(), 8));
  }

  static Stream<Breach> usesOfOtherRooms() {
    return Stream.of(
        new Breach("units", "roundbook.job.Job field;"),
        new Breach("problem", "roundbook.table.Table field;"),
        new Breach("problem.words", "roundbook.job.Job field;"),
        new Breach("table", "java.util.List<roundbook.job.Job> field;"),
        new Breach("page", "void method(roundbook.table.Table[] tables) {}"),
        new Breach("job", "Object method() { return roundbook.notch.Notch.class; }"),
        new Breach(
            "intake", "boolean method(Object o) { return o instanceof roundbook.plan.Plan; }"),
        new Breach("notch", "roundbook.stack.Stack method() { return null; }"),
        new Breach("stack", "roundbook.plan.Plan[] field = new roundbook.plan.Plan[2];"),
        new Breach("balance", "roundbook.units.Length field;"),
        new Breach("rounds", "<T extends roundbook.plan.Plan> void method() {}"),
        new Breach(
            "wood",
            "Object method(roundbook.job.Log log) { return log.toString() +"
                + " roundbook.plan.Plan.class; }"),
        new Breach("plan", "roundbook.page.Sheet field;"),
        new Breach("picture", "roundbook.page.Sheet field;"),
        new Breach("picture.canvas", "roundbook.stack.Stack field;"),
        new Breach("report.list", "roundbook.table.Table field;"),
        new Breach("report.live", "roundbook.report.list.ListSheets field;"),
        new Breach("sheet.write", "roundbook.plan.Plan field;"),
        new Breach("csv", "roundbook.job.Job field;"),
        new Breach("sundries", "roundbook.units.Length field;"));
  }

  static Stream<Breach> usesOfLibraries() {
    return Stream.of(
        new Breach("report.list", "org.apache.poi.ss.usermodel.Sheet field;"),
        new Breach("app", "org.apache.poi.xssf.usermodel.XSSFWorkbook field;"),
        new Breach("intake", "org.apache.commons.csv.CSVParser field;"),
        new Breach("sheet.write", "org.apache.commons.csv.CSVFormat field;"),
        new Breach("report.list", "java.awt.Color field;"),
        new Breach("picture.raster", "java.awt.Color field;"),
        new Breach(
            "sheet.write", "void m() throws Exception { javax.imageio.ImageIO.read(System.in); }"),
        new Breach("csv", "picocli.CommandLine field;"),
        new Breach("plan", "org.slf4j.Logger field;"),
        new Breach("rounds", "java.util.logging.Logger field;"),
        new Breach("sheet.write", "ch.qos.logback.classic.Logger field;"),
        new Breach("stack", "java.nio.file.Path field;"),
        new Breach("plan", "java.io.File field;"),
        new Breach("units", "Runnable field = java.util.concurrent.ForkJoinPool::commonPool;"),
        new Breach("job", "@picocli.CommandLine.Option(names = \"x\") int field;"));
  }

  @ParameterizedTest
  @MethodSource({"usesOfOtherRooms", "usesOfLibraries"})
  void bothFindAUseThatNoRowAllows(Breach breach) throws IOException {
    Path classes = breach.compiledInto(folder);
    assertAll(breach, ByteCodeRules.breaches(classes), PackageGraph.breaches(classes));
  }

  /** The byte code rules, as measured, do not look at casts and at the making of arrays. */
  @ParameterizedTest
  @CsvSource({"stack, new roundbook.plan.Plan[2]", "wood, (roundbook.plan.Plan) (Object) null"})
  void thePackageGraphFindsWhatTheByteCodeRulesMiss(String room, String expression)
      throws IOException {
    Breach breach = new Breach(room, "Object field = " + expression + ";");
    assertFalse(PackageGraph.breaches(breach.compiledInto(folder)).isEmpty(), breach::toString);
  }

  private static void assertAll(Breach breach, List<String> byteCode, List<String> packages) {
    assertFalse(byteCode.isEmpty(), () -> "the byte code rules missed " + breach);
    assertFalse(packages.isEmpty(), () -> "the package graph missed " + breach);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          intake  | java.time.LocalDate.now()
          intake  | java.time.LocalDate.now(java.time.ZoneId.of("Z"))
          intake  | (java.util.function.Supplier<?>) java.time.Instant::now
          sheet.read | java.time.Clock.systemUTC()
          plan    | System.currentTimeMillis()
          rounds  | System.nanoTime()
          report.book | new java.util.Date()
          csv     | java.util.Calendar.getInstance()
          rounds  | new java.util.Random()
          rounds  | new java.util.SplittableRandom().nextInt()
          balance | Math.random()
          balance | (java.util.function.DoubleSupplier) Math::random
          sheet.read | java.util.concurrent.ThreadLocalRandom.current()
          job     | java.util.UUID.randomUUID()
          plan    | String.format("%d", 1)
          plan    | "%d".formatted(1)
          units   | "I".toLowerCase()
          units   | new java.text.DecimalFormat("0.0")
          report.book | java.text.NumberFormat.getPercentInstance()
          report.book | java.text.MessageFormat.format("{0}", 1)
          csv     | java.nio.charset.Charset.defaultCharset()
          sheet.read | java.time.ZoneId.systemDefault()
          plan    | System.getProperty("user.name")
          csv     | System.out
          sheet.read | System.err
          notch   | Math.tan(0.1)
          wood    | (java.util.function.DoubleUnaryOperator) Math::log
          """)
  void theByteCodeRulesFindABadHabit(String room, String expression) throws IOException {
    Breach breach = new Breach(room, "Object field = " + expression + ";");
    assertTrue(ByteCodeRules.breaches(folder).isEmpty());
    assertEquals(1, ByteCodeRules.breaches(breach.compiledInto(folder)).size(), breach::toString);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          intake  | java.time.LocalDate.of(2020, 2, 29)
          rounds  | new java.util.Random(17)
          rounds  | new java.util.SplittableRandom(17).nextInt()
          plan    | String.format(java.util.Locale.ROOT, "%d", 1)
          units   | "I".toLowerCase(java.util.Locale.ROOT)
          notch   | StrictMath.tan(0.1) + Math.sqrt(2) + Math.max(1, 2)
          app     | java.time.Instant.now()
          app     | System.err
          csv     | org.apache.commons.csv.CSVFormat.RFC4180
          sheet.read | org.apache.poi.ss.util.CellReference.convertNumToColString(3)
          picture.raster | new java.util.zip.CRC32()
          plan    | roundbook.units.Length.ZERO
          """)
  void neitherComplainsOfWhatIsAllowed(String room, String expression) throws IOException {
    Path classes =
        new Breach(room, "final Object field = " + expression + ";").compiledInto(folder);
    assertEquals(List.of(), ByteCodeRules.breaches(classes));
    assertEquals(List.of(), PackageGraph.breaches(classes));
  }

  @Test
  void theByteCodeRulesFindAStaticFieldThatChanges() throws IOException {
    Path classes = new Breach("plan", "static int count;").compiledInto(folder);
    assertEquals(1, ByteCodeRules.breaches(classes).size());
  }

  @Test
  void theByteCodeRulesFindRoomsThatUseEachOther() throws IOException {
    new Breach("job", "").compiledInto(folder);
    new Breach("units", "roundbook.job.Intruder field;").compiledInto(folder);
    Path classes = new Breach("job", "roundbook.units.Intruder field;").compiledInto(folder);
    List<String> found = ByteCodeRules.breaches(classes);
    assertTrue(found.stream().anyMatch(line -> line.startsWith("Cycle detected")), found::toString);
  }

  @Test
  void aKnotIsFoundByItsClasses() throws IOException {
    Path classes =
        new Breach("units", "Object field = new Object() { Intruder back; };").compiledInto(folder);
    assertEquals(List.of(), Knots.larger(classes, 1));
    List<String> found = Knots.larger(Breach.programClasses(), 1);
    assertTrue(
        found.stream().anyMatch(line -> line.contains("LengthReader TapeParser")), found::toString);
  }

  private static boolean reaches(Room from, String name) {
    return from.rooms().contains(name)
        || from.rooms().stream()
            .map(next -> Room.of(Room.ROOT + next).orElseThrow())
            .anyMatch(next -> reaches(next, name));
  }

  private static Set<String> packagesWithClasses(Path classes) throws IOException {
    try (Stream<Path> files = Files.walk(classes)) {
      return files
          .filter(file -> file.toString().endsWith(".class"))
          .filter(file -> !file.endsWith("package-info.class"))
          .map(file -> classes.relativize(file.getParent()).toString().replace('/', '.'))
          .collect(Collectors.toSet());
    }
  }
}
