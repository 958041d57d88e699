package roundbook.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.intake.house.HouseTold;
import roundbook.job.Building;
import roundbook.job.Log;
import roundbook.job.Log.Source;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.problem.words.Sentences;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * A tally of the test resources with what is to be read of it.
 *
 * <p>{@code NAME.in} holds the text of a CSV file, or of a workbook as {@link BookText} reads it;
 * {@code NAME.out} holds orders such as {@code as tally.csv}, {@code charset UTF-16LE}, {@code ends
 * CR}, {@code set Name=value}, {@code source} with where its headings were published, and after a
 * blank line the logs and problems expected, a line each.
 *
 * @param name the fixture's name
 * @param orders what to do with the text
 * @param expected the lines expected
 */
record TallyFixture(String name, List<String> orders, List<String> expected) {
  private static final Path FOLDER = Path.of("src", "test", "resources", "tallies");

  /** Returns every fixture, in the order of their names. */
  static List<TallyFixture> all() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".in"))
          .sorted()
          .map(file -> of(file.substring(0, file.length() - 3)))
          .toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static TallyFixture of(String name) {
    try {
      List<String> lines = Files.readAllLines(FOLDER.resolve(name + ".out"));
      int blank = lines.indexOf("");
      return new TallyFixture(
          name, lines.subList(0, blank), lines.subList(blank + 1, lines.size()));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Returns the names of the files to make of it: a workbook is made of both kinds. */
  List<String> files() {
    return orders.stream()
        .filter(order -> order.startsWith("as "))
        .flatMap(order -> Stream.of(order.substring(3).split(", ")))
        .toList();
  }

  /** Makes the file, reads it, and returns its logs and problems, a line each. */
  List<String> read(String file, Path folder) throws IOException {
    List<String> lines = new ArrayList<>();
    List<Problem> problems = problems(file, folder, lines);
    Sentences english = Sentences.english();
    problems.forEach(
        problem -> lines.add(english.line(problem).replace(file + ": ", "").replace(file, "FILE")));
    return lines;
  }

  /** Makes the file, reads it, and returns its problems; its logs are added to the lines. */
  List<Problem> problems(String file, Path folder, List<String> lines) throws IOException {
    Path path = folder.resolve(file);
    write(path);
    Read<List<Table>> tables = Sources.read(path);
    List<Problem> problems = new ArrayList<>(tables.problems());
    if (tables.value().isPresent()) {
      Read<JobReader.Findings> job = JobReader.read(tables.value().get(), asked());
      JobReader.Findings found = job.value().orElseThrow();
      found.logs().forEach(log -> lines.add(line(log)));
      found.job().ifPresent(each -> lines.addAll(walls(each.building())));
      problems.addAll(job.problems());
    }
    return problems;
  }

  private static List<String> walls(Building building) {
    return building.walls().stream()
        .map(
            wall ->
                "wall "
                    + wall.name()
                    + ": "
                    + inches(wall.outside())
                    + " outside, "
                    + inches(wall.thickness())
                    + " thick"
                    + (wall.laidFirst() ? ", first" : ""))
        .toList();
  }

  private Asked asked() {
    Map<String, String> settings = new java.util.TreeMap<>();
    orders.stream()
        .filter(order -> order.startsWith("set "))
        .map(order -> order.substring(4).split("=", 2))
        .forEach(each -> settings.put(each[0], each[1]));
    Asked nothing = Asked.NOTHING;
    return new Asked(
        settings, walls(), nothing.sheet(), nothing.lengthUnit(), nothing.diameterUnit());
  }

  private Optional<HouseTold> walls() {
    return orders.stream()
        .filter(order -> order.startsWith("walls "))
        .map(order -> HouseTold.ofWalls(order.substring(6)))
        .findFirst();
  }

  private void write(Path path) throws IOException {
    Path source = FOLDER.resolve(name + ".in");
    if (orders.contains("book")) {
      BookText.write(Files.readAllLines(source), path);
      return;
    }
    String text = Files.readString(source);
    for (String order : orders) {
      text = order.equals("ends CR") ? text.replace("\n", "\r") : text;
      text = order.equals("ends CRLF") ? text.replace("\n", "\r\n") : text;
      text = order.equals("no last end") ? text.stripTrailing() : text;
      text = order.equals("mark") ? "\uFEFF" + text : text;
    }
    Files.write(path, text.getBytes(charset()));
  }

  private Charset charset() {
    return orders.stream()
        .filter(order -> order.startsWith("charset "))
        .map(order -> Charset.forName(order.substring(8)))
        .findFirst()
        .orElse(StandardCharsets.UTF_8);
  }

  /** Shows a log: place, tag, then inches; a tilde marks what is estimated. */
  private static String line(Log log) {
    Log.Sources sources = log.sources();
    StringBuilder line = new StringBuilder();
    line.append(log.origin().sheet().isEmpty() ? "" : log.origin().sheet() + "!");
    line.append(log.origin().row()).append(" log ").append(log.tag()).append(": ");
    line.append(inches(log.length())).append(" long, ");
    line.append(shown(log.butt(), sources.butt())).append(" / ");
    line.append(shown(log.mid(), sources.mid())).append(" / ");
    line.append(shown(log.tip(), sources.tip()));
    Log.Traits traits = log.traits();
    line.append(traits.species().isEmpty() ? "" : ", " + traits.species());
    line.append(traits.bark() == Log.Bark.UNSTATED ? "" : ", bark " + traits.bark());
    line.append(traits.keep() == Log.Keep.ANY ? "" : ", keep " + traits.keep());
    line.append(traits.skip() ? ", skip" : "");
    line.append(traits.sweep().isZero() ? "" : ", sweep " + inches(traits.sweep()));
    line.append(log.place().wall().isEmpty() ? "" : ", wall " + log.place().wall());
    log.place().round().ifPresent(round -> line.append(", round ").append(round));
    line.append(traits.remarks().isEmpty() ? "" : ", remarks " + traits.remarks());
    log.extra().forEach((key, value) -> line.append(", ").append(key).append('=').append(value));
    return line.toString().replace("\n", "\\n");
  }

  private static String shown(Length length, Source source) {
    return (source == Source.ESTIMATED ? "~" : "") + inches(length);
  }

  private static String inches(Length length) {
    return length.decimal(LengthUnit.INCH, 4).stripTrailingZeros().toPlainString();
  }

  @Override
  public String toString() {
    return name;
  }
}
