package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import roundbook.intake.Asked;
import roundbook.plan.Plan;
import roundbook.problem.Read;
import roundbook.replan.Replanner;
import roundbook.site.SiteReport;

/** A folder with a made-up tally and the crew workbooks that come of it. */
final class CrewFolder {
  private final Path folder;
  private String said = "";
  private long moves = Quick.MOVES;

  CrewFolder(Path folder) {
    this.folder = folder;
  }

  /** Writes a tally of logs for so many rounds of 20 by 14 ft walls, with spares of each length. */
  CrewFolder tally(long seed, int rounds, int spares) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> lines = new ArrayList<>(List.of("Log,Length in,Butt in,Mid in,Tip in,Bin"));
    for (int i = 0; i < rounds * 4 + 2 * spares; i++) {
      boolean across = i % 2 == 0;
      double length = (across ? 252 : 180) + random.nextInt(20);
      double size = 13.5 - 3.5 * Math.min(i, rounds * 4) / (rounds * 4.0);
      double mid = quarter(size + random.nextDouble(-0.3, 0.3));
      double half = length * random.nextDouble(0.06, 0.16) / 24;
      lines.add(
          "T%d,%s,%s,%s,%s,B%d"
              .formatted(i + 1, length, quarter(mid + half), mid, quarter(mid - half), i % 3));
    }
    Files.write(folder.resolve("hut.csv"), lines);
    return this;
  }

  /** Searches as hard as users have it, where what is chosen is tested. */
  CrewFolder thorough() {
    moves = 0;
    return this;
  }

  private static double quarter(double inches) {
    return Math.rint(inches * 4) / 4;
  }

  /** Runs the program and returns its exit code. */
  int run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit = Main.run(args, new PrintStream(out), new PrintStream(err), moves);
    said = out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
    return exit;
  }

  /** Takes the tally of a sample. */
  CrewFolder sample(String name) throws IOException {
    Files.copy(Path.of("samples", name), folder.resolve("hut.csv"));
    return this;
  }

  /** Plans the tally; the first revision comes of it. */
  CrewFolder plan(String... more) {
    return planHouse(List.of("--walls", "20x14"), more);
  }

  /** Plans the tally for the walls of some options; the first revision comes of it. */
  CrewFolder planHouse(List<String> walls, String... more) {
    List<String> args = new ArrayList<>(List.of("plan", file("hut.csv"), "--no-pictures"));
    args.addAll(walls);
    args.addAll(List.of(more));
    assertEquals(0, run(args.toArray(String[]::new)), said);
    return this;
  }

  /** Plans a revision anew and returns the exit code. */
  int replan(int revision) {
    return run("replan", "--no-pictures", book(revision).toString());
  }

  /** Returns what the last run said on both streams. */
  String said() {
    return said;
  }

  /** Returns the crew workbook of a revision. */
  Path book(int revision) {
    return folder.resolve("hut - rounds rev" + revision + ".xlsx");
  }

  /** Returns a revision as it is read back. */
  SiteReport report(int revision) {
    Read<SiteReport> read = CrewSource.read(book(revision), Asked.NOTHING);
    return read.value().orElseThrow(() -> new AssertionError(read.problems().toString()));
  }

  /** Returns the plan of a revision as it was printed. */
  Plan planOf(int revision) {
    Read<Plan> read = Replanner.printed(report(revision));
    return read.value().orElseThrow(() -> new AssertionError(read.problems().toString()));
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }
}
