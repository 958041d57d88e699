package roundbook.report.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Log;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Half;
import roundbook.plan.Plan.LogUse;
import roundbook.plan.Plan.Use;
import roundbook.plan.PlanFixtures;
import roundbook.problem.words.Sentences;
import roundbook.report.ListFixtures;
import roundbook.report.LivePlans;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.SheetMaker;
import roundbook.report.mark.ShortRows;
import roundbook.takeoff.PieceWood;
import roundbook.units.Length;
import roundbook.wood.RoundProfile;
import roundbook.wood.SawnLog;

/** Two short logs beside an opening stand on every list, and no long one in their place. */
class ShortRowsTest {
  private static final CrewContext CONTEXT =
      ListFixtures.of(PlanFixtures.inches().withShortLogs().plan(6));

  private static final PiecePlan PAIR =
      CONTEXT.plan().pieces().stream()
          .filter(piece -> !piece.halves().isEmpty())
          .findFirst()
          .orElseThrow();

  static Stream<SheetMaker> lists() {
    return Stream.of(HewingSheet::sheets, LiftingSheet::sheets, TagsSheet::sheets);
  }

  private static Stream<Log> logs() {
    return PAIR.logs().stream().map(placed -> placed.piece().log());
  }

  @ParameterizedTest
  @MethodSource("lists")
  void bothShortLogsAreListed(SheetMaker maker) {
    List<String> texts = ListFixtures.texts(ListFixtures.only(maker.sheets(CONTEXT)));
    logs().forEach(log -> assertTrue(texts.contains(log.tag()), log.tag()));
    assertFalse(texts.contains(PAIR.placed().tags()));
  }

  @Test
  void theWallSaysHowTheyLie() {
    String said = ShortRows.said(CONTEXT, PAIR);
    int wall = CONTEXT.plan().job().building().walls().indexOf(PAIR.placed().wall());
    assertTrue(ListFixtures.texts(LivePlans.walls(CONTEXT).get(wall)).contains(said));
    for (Half half : PAIR.halves()) {
      assertTrue(
          said.contains(CONTEXT.formats().feetInches(half.placed().piece().trimmed())), said);
    }
  }

  /** The window is 80 to 120 in from the corner of a wall of 216; logs reach 3 in past it. */
  @Test
  void shouldersLieAtTheCornerEnd() {
    assertEquals(83, PAIR.halves().get(0).placed().piece().trimmed().inches());
    assertEquals(99, PAIR.halves().get(1).placed().piece().trimmed().inches());
    assertEquals(9, PAIR.halves().get(0).shoulder().inches());
    assertEquals(90, PAIR.halves().get(1).shoulder().inches());
  }

  @Test
  void bothHaveTheirPlaceOnTheLogListAndTheLongLogIsASpare() {
    List<LogUse> placed =
        CONTEXT.plan().uses().stream()
            .filter(use -> use.note().toString().contains("East window"))
            .toList();
    assertEquals(
        List.of("left of opening East window", "right of opening East window"),
        placed.stream().map(use -> use.note().in(Sentences.english())).toList());
    assertTrue(placed.stream().allMatch(use -> use.use() == Use.PLACED));
    assertEquals(25, CONTEXT.plan().takeoff().wood().size());
    assertEquals(5, CONTEXT.plan().count(Use.SPARE));
  }

  /**
   * A finished short log is its sawn part past the shoulder and one neck; the neck is {@code T (T +
   * o) ((D + g) / 2 + s o / 2)}, by hand for walls 6 in thick, 3 in past the corner, 1 in 3.
   */
  @Test
  void theFinishedWoodIsTheSawnPartAndOneNeck() {
    double size =
        CONTEXT.plan().stack().courses().get(PAIR.placed().round() - 1).notch().size().inches();
    double neck = 6 * 9 * ((size + 1) / 2 + 0.5);
    for (Half half : PAIR.halves()) {
      PieceWood wood =
          CONTEXT.plan().takeoff().wood().stream()
              .filter(each -> each.log().equals(half.placed()))
              .findFirst()
              .orElseThrow();
      RoundProfile profile = RoundProfile.inchesOf(wood.log().piece());
      double from = half.buttOut() ? 9 : 0;
      RoundProfile body = profile.between(from, from + profile.length() - 9);
      double finished = new SawnLog(body, 6).volume() + neck;
      assertEquals(finished, wood.finished(), finished / 200);
    }
  }

  /** Walls 8 in thick cross at the left of the window's wall, 6 in at its right. */
  @Test
  void aTagShowsTheMarksOfItsOwnCornerOnly() {
    Length six = Length.ofInches(6);
    CrewContext thick =
        ListFixtures.of(LivePlans.thick(CONTEXT.plan(), six, six, Length.ofInches(8), six));
    List<String> texts = ListFixtures.texts(ListFixtures.only(TagsSheet.sheets(thick)));
    var notch = thick.plan().stack().courses().get(PAIR.placed().round() - 1).notch();
    String lower = thick.formats().mark(notch.lower());
    String corner = thick.formats().mark(notch.lowerCorner(Length.ofInches(8)));
    assertEquals(1, Collections.frequency(texts, thick.text("tags.lower", lower, corner)));
    assertEquals(11, texts.stream().filter(text -> text.contains("tip corner")).count());
  }
}
