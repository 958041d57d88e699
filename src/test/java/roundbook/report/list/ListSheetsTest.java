package roundbook.report.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.ClassSupply;
import roundbook.plan.Houses;
import roundbook.plan.PiecePlan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Quantity;
import roundbook.problem.Problem;
import roundbook.problem.words.Sentences;
import roundbook.report.ListFixtures;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.words.Decimals;
import roundbook.report.words.QuantityWords;
import roundbook.takeoff.PieceWood;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/** The lists for the crew and the yard, row by row against the plan. */
class ListSheetsTest {
  static Stream<CrewContext> contexts() {
    return ListFixtures.several();
  }

  private static LengthFormat formats(CrewContext context) {
    return LengthFormat.forJob(context.rules().unit(), context.rules().printStep());
  }

  /** Returns the rows under a heading that its table has. */
  private static List<List<String>> under(Sheet sheet, String heading, int count) {
    int head = ListFixtures.headRow(sheet, heading);
    assertTrue(head > 0, sheet.name() + " has no " + heading);
    return Stream.iterate(head + 1, row -> row + 1)
        .limit(count)
        .map(row -> ListFixtures.row(sheet, row))
        .toList();
  }

  @Test
  void hewingSaysWhichFaceIsOutside() {
    CrewContext context = ListFixtures.inches(2);
    Sheet sheet = ListFixtures.only(HewingSheet.sheets(context));
    List<List<String>> rows = under(sheet, "Sweep", 8);
    // Walking clockwise round a building from butt to tip, its outside is on the left hand.
    assertEquals(
        List.of("LEFT", "LEFT", "LEFT", "LEFT"),
        rows.subList(0, 4).stream().map(row -> row.get(5)).toList());
    assertTrue(rows.subList(4, 8).stream().allMatch(row -> row.get(5).equals("RIGHT")));
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void hewingLeavesTheNaturalHeight(CrewContext context) {
    Sheet sheet = ListFixtures.only(HewingSheet.sheets(context));
    List<PiecePlan> pieces = context.plan().pieces();
    List<List<String>> rows = under(sheet, "Sweep", pieces.size());
    for (int index = 0; index < pieces.size(); index++) {
      PiecePlan piece = pieces.get(index);
      List<String> row = rows.get(index);
      assertPrinted(context, piece.placed().first().piece().butt(), row.get(6));
      assertPrinted(context, piece.placed().first().piece().mid(), row.get(7));
      assertPrinted(context, piece.placed().first().piece().tip(), row.get(8));
      Length slab = piece.placed().first().piece().tip().minus(piece.placed().wall().thickness());
      assertPrinted(context, slab.dividedBy(2), row.get(10));
      assertEquals(
          piece.notes().contains(PiecePlan.Note.MID_ESTIMATED),
          row.get(11).contains("first measure middle"));
    }
  }

  private static void assertPrinted(CrewContext context, Length length, String shown) {
    Length printed = length.roundedTo(context.rules().printStep());
    assertEquals(printed, Length.of(new BigDecimal(shown), context.rules().unit()));
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void liftsStandInTheOrderInWhichLogsAreNeeded(CrewContext context) {
    Sheet sheet = ListFixtures.only(LiftingSheet.sheets(context));
    List<PiecePlan> sorted =
        context.plan().pieces().stream()
            .sorted(
                Comparator.<PiecePlan>comparingInt(piece -> piece.placed().round())
                    .thenComparing(piece -> !piece.placed().wall().laidFirst()))
            .toList();
    List<List<String>> rows = under(sheet, "MAY REACH", sorted.size());
    for (int index = 0; index < sorted.size(); index++) {
      boolean metric = context.rules().metric();
      PiecePlan.Weight weight = sorted.get(index).weight();
      double about = metric ? weight.kilograms() : weight.pounds();
      List<String> row = rows.get(index);
      assertEquals("" + (index + 1), row.get(0));
      assertEquals(sorted.get(index).placed().first().piece().log().tag(), row.get(1));
      assertEquals(about, Double.parseDouble(row.get(4)), 0.5);
      double least = Double.parseDouble(row.get(5));
      double most = Double.parseDouble(row.get(6));
      assertTrue(least < about && about < most, row.toString());
      assertTrue(most < Double.parseDouble(row.get(7)), row.toString());
    }
  }

  /** Moistures of white pine were read in no source, so what its logs may reach is marked. */
  @Test
  void weightsThatStandInAreMarkedWithWhatTheyRestOn() {
    CrewContext context = ListFixtures.of(PlanFixtures.inches().plan(2));
    Sheet sheet = ListFixtures.only(LiftingSheet.sheets(context));
    List<String> all = ListFixtures.texts(sheet);
    boolean marked = context.plan().takeoff().wood().stream().anyMatch(this::standsIn);
    assertEquals(
        marked, all.stream().anyMatch(text -> text.contains("1.41 × its green")), "" + all);
    long signs =
        sheet.rows().values().stream()
            .flatMap(row -> row.values().stream())
            .filter(cell -> cell.value() instanceof Cell.Number)
            .filter(cell -> cell.format() == Cell.Format.POUNDS_STAND_IN)
            .count();
    long logs = context.plan().takeoff().wood().stream().filter(this::standsIn).count();
    assertEquals(2 * logs, signs);
    String shown =
        new DataFormatter(Locale.US)
            .formatRawCellContents(1048, -1, Cell.Format.POUNDS_STAND_IN.code());
    assertEquals("▲ 1,048 lb", shown);
    for (int column : List.of(7, 8)) {
      assertTrue(sheet.widths().get(column) >= shown.length() + 2, "#### in column " + column);
    }
  }

  private boolean standsIn(PieceWood wood) {
    return wood.species().standIn() || wood.species().species().spreadStandsIn();
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void everyProblemStandsOnItsSheet(CrewContext context) {
    Sheet sheet = ListFixtures.only(ProblemsSheet.sheets(context));
    List<Problem> problems = context.problems();
    List<List<String>> rows = under(sheet, "What is wrong", problems.size());
    for (int index = 0; index < problems.size(); index++) {
      Problem problem = problems.get(index);
      assertEquals(
          List.of(
              problem.where().toString(),
              problem.log(),
              Sentences.english().message(problem),
              Sentences.english().found(problem),
              Sentences.english().remedy(problem),
              problem.code().id()),
          rows.get(index).subList(1, 7));
      assertEquals(problem.carried(), rows.get(index).get(7));
    }
    assertEquals("■ ERROR", rows.get(0).get(0));
    assertEquals("note", rows.get(1).get(0));
    int head = ListFixtures.headRow(sheet, "What is wrong");
    assertEquals(Role.FLAG, sheet.cell(head + 1, 1).orElseThrow().role());
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void everySettingIsThereWithValueAndSource(Setting setting) {
    CrewContext context = ListFixtures.inches(2);
    Sheet sheet = ListFixtures.only(SettingsSheet.sheets(context));
    Cell cell = ListFixtures.named(sheet, setting.label()).orElseThrow();
    List<String> row =
        under(sheet, "Set by", Setting.values().length + 9).stream()
            .filter(each -> each.get(0).equals(setting.label()))
            .findFirst()
            .orElseThrow();
    assertEquals(setting.label(), row.get(0));
    assertEquals(setting.meaning().in(Sentences.english()), row.get(5));
    assertEquals(row.get(1), row.get(3), "the value that the pages were printed with");
    assertEquals(setting.kind() == SettingKind.LENGTH ? "in" : "", row.get(2));
    BuildRules rules = context.rules();
    assertEquals(new Decimals(false).setting(setting, rules), ListFixtures.shown(cell));
    String source = rules.value(setting).map(value -> value.origin().name()).orElse("DEFAULT");
    assertEquals(source.toLowerCase(java.util.Locale.ROOT), row.get(4));
    assertTrue(cell.role() == Role.TYPED_IN || cell.role() == Role.TYPED_IN_TEXT);
  }

  @Test
  void settingsCarryWallsAndWhatMadeThem() {
    Sheet sheet = ListFixtures.only(SettingsSheet.sheets(ListFixtures.inches(2)));
    List<List<String>> walls = under(sheet, "Outside length", 4);
    assertEquals(List.of("N", "288", "x", "6", ""), walls.get(0).subList(0, 5));
    assertEquals(List.of("E", "216", "", "6", ""), walls.get(1).subList(0, 5));
    assertEquals("road side", walls.get(2).get(4));
    Map<String, String> made =
        Map.of("Made_by_version", "0.0-test", "Made_revision", "2", "Made_from", "cabin.xlsx");
    made.forEach(
        (name, value) ->
            assertEquals(value, ListFixtures.shown(ListFixtures.named(sheet, name).orElseThrow())));
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void materialsCompareLogsOnHandWithLogsNeeded(CrewContext context) {
    List<ClassSupply> supply = context.plan().supply();
    Sheet sheet = ListFixtures.only(MaterialsSheet.sheets(context));
    List<List<String>> rows = under(sheet, "Spares wanted", supply.size());
    for (int index = 0; index < supply.size(); index++) {
      assertTrue(rows.get(index).contains("" + supply.get(index).needed()));
      assertTrue(rows.get(index).contains("" + supply.get(index).onHand()));
    }
  }

  @Test
  void materialsListEveryQuantity() {
    CrewContext context = ListFixtures.inches(4);
    List<String> texts = ListFixtures.texts(ListFixtures.only(MaterialsSheet.sheets(context)));
    for (Quantity quantity : context.plan().quantities()) {
      QuantityWords words = new QuantityWords(context.words());
      assertTrue(texts.contains(words.item(quantity)), quantity.item());
      assertTrue(texts.contains(words.note(quantity)), quantity.item());
    }
  }

  @Test
  void orderIsOnePageAndSaysWhatIsMissing() {
    CrewContext context = ListFixtures.of(PlanFixtures.inches().wanting(9).plan(6));
    Sheet sheet = ListFixtures.only(OrderSheet.sheets(context));
    assertEquals(1, sheet.page().fit().tall());
    List<String> line = under(sheet, "How many", 1).get(0);
    assertEquals(
        List.of("6", "28' 0\"", "14' 5\"", "26' 0\"", "12' 5\"", "10", "12"), line.subList(0, 7));
    assertEquals(List.of("N S", "■ needed"), line.subList(9, 11));
    assertTrue(ListFixtures.texts(sheet).stream().anyMatch(text -> text.contains("6 of 9 rounds")));
  }

  @Test
  void nothingMissingAndNothingBuiltHaveNoPage() {
    CrewContext context = ListFixtures.inches(4);
    assertTrue(context.plan().order().isEmpty());
    assertTrue(OrderSheet.sheets(context).isEmpty());
    assertTrue(AsBuiltSheet.sheets(context).isEmpty());
    assertFalse(ListSheets.has(context, Tab.ORDER) || ListSheets.has(context, Tab.AS_BUILT));
  }

  @Test
  void openingsAreListedOrSaidToBeNone() {
    Sheet sheet = ListFixtures.only(OpeningsSheet.sheets(ListFixtures.inches(2)));
    assertEquals(
        List.of("Front door", "S", "120", "36", "0", "82", "cut after stacking", "leaf 32 × 74 in"),
        ListFixtures.rowsFrom(sheet, "Front door").get(0));
    CrewContext none = ListFixtures.of(PlanFixtures.inches().plan(2));
    List<String> texts = ListFixtures.texts(ListFixtures.only(OpeningsSheet.sheets(none)));
    assertTrue(texts.stream().anyMatch(text -> text.startsWith("No doors or windows")));
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void everyPlacedLogHasATagWithItsMarks(CrewContext context) {
    List<String> texts = ListFixtures.texts(ListFixtures.only(TagsSheet.sheets(context)));
    LengthFormat formats = formats(context);
    for (PiecePlan piece : context.plan().pieces()) {
      int round = piece.placed().round();
      assertTrue(texts.contains(round + piece.placed().wall().name()));
      assertTrue(texts.contains(piece.placed().first().piece().log().tag()));
      var notch = context.plan().stack().courses().get(round - 1).notch();
      String upper =
          "▲ "
              + formats.mark(notch.upper())
              + " inside   ▲ "
              + formats.mark(notch.upperOutside(piece.placed().wall().thickness()))
              + " outside";
      assertTrue(texts.contains(upper), upper);
    }
    for (PiecePlan piece : context.plan().round(1)) {
      String off = formats.feetInches(piece.placed().first().piece().cutOffButt());
      String ends = "● BUTT " + piece.buttAt() + "  −" + off + "   ○ TIP ";
      assertTrue(texts.stream().anyMatch(text -> text.startsWith(ends)), ends);
    }
  }

  /** A line of marks was cut off where its tag went on to tell of a level end or a saddle. */
  @Test
  void aTagTellsUnderItsMarksWhereTheyDiffer() {
    CrewContext wing = ListFixtures.of(Houses.wing(true, "drain", 2));
    List<String> texts = ListFixtures.texts(ListFixtures.only(TagsSheet.sheets(wing)));
    List<String> under =
        texts.stream()
            .filter(text -> text.startsWith("▲") && text.endsWith("see Round 01"))
            .map(text -> text.substring(text.indexOf('\n') + 1))
            .toList();
    assertEquals(
        List.of(
            "× S 19' 9\": see Round 01",
            "level at SE   × W2 13' 9\": see Round 01",
            "level at SW2: see Round 01"),
        under);
    assertTrue(texts.stream().noneMatch(text -> text.startsWith("▲") && text.length() > 90));
  }

  @Test
  void tagsAreEightAPage() {
    Sheet sheet = ListFixtures.only(TagsSheet.sheets(ListFixtures.inches(14)));
    assertEquals(56, sheet.boxes().size());
    int before = 0;
    for (int last : sheet.print().breaks()) {
      int from = before;
      long tags =
          sheet.boxes().stream().filter(box -> box.top() > from && box.bottom() <= last).count();
      assertEquals(8, tags);
      before = last;
    }
    assertEquals(6, sheet.print().breaks().size());
  }

  @Test
  void storyPoleStandsAsItIsReadFromTheTop() {
    CrewContext context = ListFixtures.inches(4);
    Sheet sheet = ListFixtures.only(StoryPoleSheet.sheets(context));
    List<List<String>> rows = under(sheet, "Round", 4);
    LengthFormat formats = formats(context);
    for (int round = 1; round <= 4; round++) {
      List<String> row = rows.get(4 - round);
      assertEquals("" + round, row.get(0));
      assertEquals(
          formats.feetInches(context.plan().stack().firstHeights().get(round - 1)), row.get(1));
      String seat = formats.feetInches(context.plan().stack().levelHeight(round));
      String first = formats.feetInches(context.plan().stack().firstLevelHeight(round));
      assertEquals(round == 4 ? "N S " + first : seat, row.get(3), "what is read in the round");
    }
  }

  @Test
  void withoutADrawingTheTemplateHasABarToCheckThePrintBy() {
    assertEquals(72.0, barHeight(bare(ListFixtures.inches(1))), 1e-9);
    assertEquals(50 / 25.4 * 72, barHeight(bare(ListFixtures.metric(1))), 1e-9);
    Sheet sheet = ListFixtures.only(TemplateSheet.sheets(bare(ListFixtures.inches(1))));
    assertTrue(sheet.figures().isEmpty());
    // One in three over 6 in, and over 6 + 3 in.
    assertEquals(List.of("N", "2", "3"), under(sheet, "Where", 1).get(0).subList(0, 3));
  }

  @Test
  void theTemplateIsOnePageAtFullSize() {
    Sheet template = ListFixtures.only(TemplateSheet.sheets(ListFixtures.inches(4)));
    assertEquals(1, template.figures().size());
    assertTrue(template.print().breaks().isEmpty() && template.print().area().isEmpty());
    Figure figure = template.figures().get(0);
    Figure.At at = (Figure.At) figure.place();
    assertTrue(at.width().inches() <= 7.47, "wider than A4 within its margins");
    assertTrue(at.height().inches() <= 9.9, "higher than Letter within its margins");
    assertFalse(figure.altText().isBlank());
  }

  private static CrewContext bare(CrewContext context) {
    return CrewContext.of(
        context.plan(), List.of(), new CrewContext.Issue(1, "cabin.xlsx", "0.0-test", false));
  }

  private static double barHeight(CrewContext context) {
    Sheet sheet = ListFixtures.only(TemplateSheet.sheets(context));
    int row = sheet.boxes().get(0).top();
    return sheet.heights().get(row);
  }
}
