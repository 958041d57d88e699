package roundbook.report.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.page.TextHeight;
import roundbook.plan.PlanFixtures;
import roundbook.report.ListFixtures;
import roundbook.report.words.Words;

/** Heights of wrapped text, the frame of list sheets, and the words they use. */
class TextHeightTest {
  private static int lines(String text, Role role, double characters) {
    double one = TextHeight.of("a", role, 100);
    double two = TextHeight.of("a\nb", role, 100);
    return (int) Math.round((TextHeight.of(text, role, characters) - one) / (two - one)) + 1;
  }

  @ParameterizedTest
  @CsvSource({
    "'', 20, 1",
    "short, 20, 1",
    "two words that need more, 17, 2",
    "two words that need more, 14, 3",
    "averyveryverylongwordwithoutanyblank, 12, 4"
  })
  void linesBreakBetweenWords(String text, double characters, int expected) {
    assertEquals(expected, lines(text, Role.BODY, characters));
  }

  @Test
  void aRemarkOf200CharactersFitsItsCell() {
    assertEquals(200, PlanFixtures.LONG_REMARK.length());
    int lines = lines(PlanFixtures.LONG_REMARK, Role.BODY, 23);
    assertTrue(lines >= 9 && lines <= 12, "lines " + lines);
  }

  @Test
  void largerLettersNeedMoreRoom() {
    String text = "The heaviest first. Estimates for green wood.";
    assertTrue(TextHeight.of(text, Role.HEADING, 40) > TextHeight.of(text, Role.BODY, 40));
    assertTrue(lines(text, Role.CAUTION, 41) >= lines(text, Role.PLAIN, 41));
  }

  @Test
  void aTableWiderThanItsGridIsRefused() {
    ListSheet list = list();
    assertThrows(IllegalArgumentException.class, () -> list.spans(2, 2));
  }

  @Test
  void rowsGrowWithTheirText() {
    Sheet sheet = list().text(Role.PLAIN, "word ".repeat(60)).text(Role.PLAIN, "word").build();
    assertTrue(sheet.heights().get(1) > 3 * sheet.heights().get(2));
  }

  private static ListSheet list() {
    CrewContext context = ListFixtures.inches(1);
    PageSetup page = context.page(PageKind.TABLE);
    return new ListSheet(context, Tab.ORDER, page, 20, 20, 20);
  }

  @Test
  void wordsAreFilledIn() {
    Words words = Words.of("en");
    assertEquals("REV 3", words.text("page.revision", 3));
    assertEquals("page {page} of {pages}", words.text("page.count", "{page}", "{pages}"));
    assertThrows(MissingResourceException.class, () -> words.text("no.such.key"));
  }

  @Test
  void anUnknownLanguageIsEnglish() {
    assertEquals("Start", Words.of("zz").text("tab.start"));
    assertEquals("Start", Words.of("").text("tab.start"));
  }

  @ParameterizedTest
  @CsvSource({"$1 and \\\\2", "it's 24' 6\"", "{1}"})
  void whatIsFilledInIsTakenAsItIs(String value) {
    assertEquals("from " + value, Words.of("en").text("page.from", value));
  }
}
