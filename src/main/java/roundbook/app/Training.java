package roundbook.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Runs the program as people do, for the image's build to see which classes to keep. */
final class Training {
  private Training() {}

  /**
   * Runs all commands.
   *
   * @param args a folder for what is written, a job workbook, a second one, and a tally
   * @throws IllegalStateException if a run fails
   */
  public static void main(String[] args) {
    String first = Path.of(args[0], "first.xlsx").toString();
    String second = Path.of(args[0], "second.xlsx").toString();
    run("plan", "--force", "-o", first, args[1]);
    run("plan", "--force", "-o", second, args[2]);
    run("replan", "--force", "-o", second, first);
    run("compare", first, second);
    run("check", args[3]);
  }

  private static void run(String... args) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream kept = new PrintStream(said, true, StandardCharsets.UTF_8);
    int code = Main.run(args, kept, kept);
    if (code != Exit.DONE.code()) {
      throw new IllegalStateException(said.toString(StandardCharsets.UTF_8));
    }
  }
}
