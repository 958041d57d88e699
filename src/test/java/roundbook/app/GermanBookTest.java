package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Setting;
import roundbook.problem.ProblemCode;

/** A German workbook of each sample says nothing in English but what the job itself says. */
class GermanBookTest {
  private static final Pattern WORD = Pattern.compile("[\\p{L}]{3,}");

  /** Titles of the publications that figures are from, and names of log rules. */
  private static final String TITLES =
      "Wood Handbook, Forest Products Laboratory, Table 4-3; ICC 400 section 304, second-hand;"
          + " FIA wood and bark weight table; Scribner formula, Scribner Decimal C, International"
          + " 1/4-inch";

  /** Names of settings, of problems and of publications, which are the same in every language. */
  private static final Set<String> NAMES = names();

  @TempDir Path folder;

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "hill-cabin.xlsx, xlsx, ''",
    "metric-hut.xlsx, xlsx, ''",
    "hill-cabin-tally.csv, csv, 20x14"
  })
  void noCellSpeaksEnglish(String sample, String ending, String walls) throws IOException {
    Path input = Path.of("samples", sample);
    Path book = folder.resolve("book.xlsx");
    plan(input, walls, book);
    Set<String> english = words("report/words/words.properties");
    english.addAll(words("problem/words/sentences.properties"));
    english.removeAll(words("report/words/words_de.properties"));
    english.removeAll(words("problem/words/sentences_de.properties"));
    english.removeAll(NAMES);
    english.removeAll(wordsOf(sample));
    english.removeAll(ending.equals("csv") ? wordsOf(Files.readString(input)) : own(input));
    List<String> spoken = new ArrayList<>();
    for (String line : texts(book)) {
      if (line.startsWith("Probleme!H")) {
        continue; // hidden: codes and values, in no language
      }
      Set<String> found = wordsOf(line);
      found.retainAll(english);
      if (!found.isEmpty()) {
        spoken.add(line + " " + found);
      }
    }
    assertEquals(List.of(), spoken);
  }

  private void plan(Path input, String walls, Path book) {
    List<String> args = new ArrayList<>(List.of("plan", input.toString(), "-q"));
    args.addAll(List.of("--no-pictures", "--language", "de", "-o", book.toString()));
    if (!walls.isEmpty()) {
      args.addAll(List.of("--walls", walls));
    }
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream quiet = new PrintStream(new ByteArrayOutputStream(), true);
    int exit = Quick.run(args.toArray(new String[0]), quiet, new PrintStream(err, true));
    assertEquals(0, exit, err.toString());
  }

  /** Returns the words of the sample's own cells: names, species, remarks, choices. */
  private static Set<String> own(Path input) throws IOException {
    return texts(input).stream()
        .filter(line -> !line.startsWith("Job!D"))
        .flatMap(line -> wordsOf(line).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Returns each text of a workbook after its place, and the names of the sheets. */
  private static List<String> texts(Path file) throws IOException {
    List<String> texts = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        ReadableWorkbook workbook = new ReadableWorkbook(in)) {
      for (Sheet sheet : workbook.getSheets().toList()) {
        for (Row row : sheet.read()) {
          row.stream().forEach(cell -> add(texts, sheet.getName(), cell));
        }
      }
    }
    assertTrue(texts.size() > 50, file.toString());
    return texts;
  }

  private static void add(List<String> texts, String sheet, Cell cell) {
    boolean text = cell != null && cell.getValue() instanceof String;
    if (text && cell.getType() != CellType.NUMBER) {
      texts.add(sheet + "!" + cell.getAddress() + " " + cell.getValue());
    }
  }

  private static Set<String> names() {
    Stream<String> settings = Stream.of(Setting.values()).map(Setting::label);
    Stream<String> choices = Stream.of(Setting.values()).flatMap(each -> each.choices().stream());
    Stream<String> codes = Stream.of(ProblemCode.values()).map(ProblemCode::id);
    return Stream.of(settings, choices, codes, Stream.of(TITLES))
        .flatMap(each -> each)
        .flatMap(text -> wordsOf(text).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> words(String bundle) throws IOException {
    Properties properties = new Properties();
    try (InputStream in = GermanBookTest.class.getResourceAsStream("/roundbook/" + bundle);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      properties.load(reader);
    }
    return wordsOf(String.join(" ", properties.values().stream().map(String::valueOf).toList()));
  }

  private static Set<String> wordsOf(String text) {
    return WORD.matcher(text.replace('_', ' '))
        .results()
        .map(MatchResult::group)
        .map(word -> word.toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
