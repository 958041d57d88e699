package roundbook.report.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.plan.Houses;
import roundbook.plan.Junction;
import roundbook.report.ListFixtures;
import roundbook.report.frame.CrewContext;
import roundbook.report.round.RoundSheets;

/** At which face heights are read where one is lower. */
class ReadFacesTest {
  /**
   * What is wanted at a tee is the higher side of its saddle: a side that hooks has it fall into
   * the house, one that drains outwards.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "hook, 'At SW2 read S at its OUTSIDE face, where the shoulder of W2 is;'",
    "drain, 'At SW2 read S at its INSIDE face, where the tail of W2 comes out;'"
  })
  void heightsReadAtATeeTellTheirFace(String reentrant, String said) {
    CrewContext wing = ListFixtures.of(Houses.wing(true, reentrant, 2));
    Junction tee =
        Junction.crossings(wing.plan().stack(), wing.plan().stack().courses().get(0)).stream()
            .filter(each -> each.kind() == Junction.Kind.TEE)
            .findFirst()
            .orElseThrow();
    boolean outside = tee.upperOutside().orElseThrow().isMoreThan(tee.upper().orElseThrow());
    assertEquals(outside, said.contains("OUTSIDE"));
    Stream.of(StoryPoleSheet.sheets(wing), LevelsSheet.of(wing), RoundSheets.sheets(wing))
        .forEach(
            sheets ->
                assertTrue(
                    ListFixtures.texts(sheets.get(0)).stream().anyMatch(t -> t.contains(said))));
    CrewContext plain = ListFixtures.inches(2);
    assertTrue(
        ListFixtures.texts(StoryPoleSheet.sheets(plain).get(0)).stream()
            .noneMatch(text -> text.contains("face")));
  }
}
