package roundbook.intake.felled;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.intake.Tally;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.plan.Jobs;
import roundbook.problem.Problem;
import roundbook.problem.Problems;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.problem.words.Sentences;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;

/** Stems as they are measured with a tape, and what of them cannot be cut by. */
class StemsReaderTest {
  private static final String HEAD =
      "stem|species|length|0 ft|1 ft|2 ft|4 ft|8 ft|12 ft|bad from|bad to|bark|keep for|sweep";
  private static final String GOOD =
      "7|spruce|14' 6\"|16|14 1/2|13 3/4|13 1/4|12 3/4|12|5 ft|6' 2\"|over|sill|1";

  private final Problems problems = new Problems();

  private List<Stem> read(String... rows) {
    return read(false, rows);
  }

  /** Sheets of stems of a job and of a tally that comes to it are all read. */
  @Test
  void everySheetOfStemsIsRead() {
    Read<List<Stem>> read =
        JobReader.check(
            List.of(table("job.xlsx", HEAD, GOOD), table("more.xlsx", HEAD, "8" + GOOD)),
            Asked.NOTHING,
            rules -> log -> {});
    assertEquals(List.of("7", "87"), read.value().get().stream().map(Stem::tag).toList());
  }

  private static Table table(String file, String... rows) {
    List<Row> made = new ArrayList<>();
    for (String text : rows) {
      String[] cells = text.split("\\|", -1);
      made.add(
          new Row(
              made.size() + 1,
              IntStream.range(0, cells.length)
                  .mapToObj(at -> Cell.text(at + 1, cells[at].strip()))
                  .toList(),
              false,
              false));
    }
    return Table.of(file, "Stems", Set.of(), made);
  }

  private List<Stem> read(boolean metric, String... rows) {
    Table table = table("job.xlsx", rows);
    StemsReader.Units units = new StemsReader.Units(Optional.empty(), Optional.empty());
    StemsReader reader =
        new StemsReader(
            Jobs.rules(metric)
                .with(
                    Setting.BARK_OFF,
                    metric ? Length.ofMillimetres(10) : Length.ofInchFraction(1, 2),
                    Origin.OPTION),
            units,
            "taken"::equals,
            problems);
    assertTrue(StemsReader.isOfStems(table));
    reader.read(table);
    return reader.stems();
  }

  @Test
  void aStemHasItsDiametersItsBadStretchesAndWhatItIs() {
    Stem stem = read(HEAD, GOOD).get(0);
    assertEquals(List.of(), problems.sorted());
    assertEquals(Length.ofInches(174), stem.length());
    assertEquals(Length.ofInchFraction(31, 2), stem.profile().at(Length.ZERO));
    assertEquals(12.5, stem.profile().at(Length.ofInches(72)).inches(), 1e-9);
    assertEquals(
        List.of(
            new Stem.Stretch(Length.ofInches(60), Length.ofInches(74)),
            new Stem.Stretch(Length.ofInches(144), Length.ofInches(174))),
        stem.bad(),
        "the crook, and the top that was not measured");
    assertEquals(Log.Keep.SILL, stem.traits().keep());
    assertEquals(Log.Bark.OVER, stem.traits().bark());
  }

  @Test
  void metricStationsAndUnitsInHeadings() {
    Stem stem =
        read(
                true,
                "Baum|Länge (m)|bei 0|bei 30 cm|bei 60 cm|bei 120 cm|bei 2,4 m (cm)|gesund ab",
                "B1|3|40|37|35|33,5|31|15 cm")
            .get(0);
    assertEquals(Length.ofMillimetres(3000), stem.length());
    assertEquals(Length.ofMillimetres(335), stem.profile().at(Length.ofMillimetres(1200)));
    assertEquals(Length.ofMillimetres(150), stem.bad().get(0).to());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "7|spruce|14' 6\"|16|14 1/2|13 3/4|14 1/2|12 3/4|12|||||; G2; thickens",
        "7|spruce|11 ft|16|14 1/2|13 3/4|13 1/4|12 3/4|12|||||; C2; past its length",
        "7|spruce|14' 6\"|16|14 1/2|13 3/4|13 1/4|12 3/4|12|5 ft|16 ft|||; K2; does not lie",
        "7|spruce|14' 6\"|16|14 1/2|13 3/4|13 1/4|12 3/4|12|8 ft|6 ft|||; J2; does not lie",
        "7|spruce|14' 6\"||||13 1/4||||||||; A2; too few stations",
        "7|spruce|14' 6\"|16|14 1/2|thick|13 1/4|12 3/4|12|||||; F2; thick",
        "7|spruce|14' 6\"|160|14 1/2|13 3/4|13 1/4|12 3/4|12|||||; D2; no diameter",
        "|spruce|14' 6\"|16|14 1/2|13 3/4|13 1/4|12 3/4|12|||||; A2; no tag",
        "taken|spruce|14' 6\"|16|14 1/2|13 3/4|13 1/4|12 3/4|12|||||; A2; another stem or log",
        "7|spruce|14' 6\"|16|14 1/2|13 3/4|13 1/4|12 3/4|12||||stairs|; M2; nothing to keep"
      })
  void whatIsWrongIsSaidByItsCellAndTheStemIsLeftOut(String row, String cell, String said) {
    assertEquals(List.of(), read(HEAD, row));
    Problem problem = problems.sorted().get(0);
    assertTrue(problem.where().address().equals(cell), problem.toString());
    String message = Sentences.english().message(problem);
    assertTrue(message.contains(said), message);
    assertFalse(Sentences.english().remedy(problem).isEmpty());
  }

  /**
   * What is sound of a stem of 14 ft that is measured from its butt to 12 ft: nothing above, and
   * nothing that is told to be bad.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "||||; 144-168",
        "5 ft|6' 2\"|||; 60-74 144-168",
        "||1 ft||; 0-12 144-168",
        "|||10 ft|; 120-168",
        "||1 ft|10 ft|; 0-12 120-168",
        "2 ft|3 ft|1 ft|13 ft|; 0-12 24-36 144-168",
        "||15 ft||; E2 bad-stem.stretch",
        "5 ft||||; D2 bad-number.length",
        "|-1 ft|||; C2 bad-number.length",
        "||||-1; G2 bad-number.length",
        "||||much; G2 bad-number.length",
      })
  void badStretchesComeOffAndMeasuresAreChecked(String told, String read) {
    List<Stem> stems =
        read(
            "stem|length|bad from|bad to|clear from|clear to|sweep|0 ft|1 ft|4 ft|8 ft|12 ft",
            "7|14 ft|" + told + "|16|14 1/2|13 1/4|12 3/4|12");
    String found =
        stems.isEmpty()
            ? Tally.said(problems.sorted().subList(0, 1))
            : stems.get(0).bad().stream()
                .map(each -> Tally.inches(each.from()) + "-" + Tally.inches(each.to()))
                .collect(Collectors.joining(" "));
    assertEquals(read, found);
  }

  @ParameterizedTest
  @CsvSource({
    "over, OVER, 15.5",
    "OB, OVER, 15.5",
    "mit Rinde, OVER, 15.5",
    "off, OFF, 16",
    "'', UNSTATED, 16",
  })
  void barkComesOffAStemThatWasMeasuredOverIt(String told, Log.Bark bark, String butt) {
    Stem stem = read(HEAD, GOOD.replace("over", told)).get(0);
    assertEquals(bark, stem.traits().bark());
    assertEquals(butt, Tally.inches(stem.profile().at(Length.ZERO)));
  }

  @Test
  void distancesThatDoNotRiseOrNameNoUnitAreSaid() {
    List<Stem> stems =
        read("stem|length|0|1 ft|4 ft|2 ft|8|12 ft", "7|14 ft|16|14 1/2|13 1/4|13 3/4|12 3/4|12");
    assertEquals(
        List.of("F1", "G1"),
        problems.sorted().stream()
            .filter(problem -> problem.where().row() == 1)
            .map(problem -> problem.where().address())
            .toList());
    assertEquals(4, stems.get(0).profile().stations().size());
  }

  @Test
  void stationsTooFarApartAndATopThatWasNotMeasuredAreWarnedOf() {
    assertEquals(
        2,
        read("stem|length|0 ft|2 ft|4 ft|12 ft", "1|13 ft|16|14|13|12", "2|30 ft|16|14|13|12")
            .size());
    assertEquals(2, problems.sorted().size());
    assertTrue(problems.sorted().stream().allMatch(each -> each.severity() == Severity.WARNING));
  }

  @Test
  void aTallyIsNoTableOfStems() {
    Row head =
        new Row(
            1,
            List.of(
                Cell.text(1, "log"),
                Cell.text(2, "length"),
                Cell.text(3, "butt"),
                Cell.text(4, "mid"),
                Cell.text(5, "tip")),
            false,
            false);
    assertFalse(StemsReader.isOfStems(Table.of("a.csv", "", Set.of(), List.of(head))));
  }
}
