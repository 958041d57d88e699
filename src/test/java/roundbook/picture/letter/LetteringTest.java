package roundbook.picture.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.picture.raster.Spot;

class LetteringTest {
  private static final Lettering PLAIN = new Lettering(10, false);

  @ParameterizedTest
  @CsvSource({"6", "8", "10", "15", "40"})
  void aWholeNumberStandsApartFromItsFraction(double size) {
    Lettering lettering = new Lettering(size, true);
    double whole = lettering.width("1");
    double fraction = lettering.width("1/16");
    double both = lettering.width("1 1/16");
    assertTrue(both - whole - fraction > size * 0.1, both + " " + whole + " " + fraction);
    assertTrue(both > lettering.width("11/16") * 1.15);
  }

  @ParameterizedTest
  @CsvSource({"10, 7", "20, 14", "48, 33.6"})
  void capitalsAreSevenTenthsOfTheSize(double size, double high) {
    Label label = Label.of("H", size, new Spot(100, 100));
    double pen = 2 * label.lettering().reach();
    assertEquals(high + pen, label.box().height(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"400, keep full log here", "60, keep f…", "12, k…"})
  void whatIsTooLongIsCutWithAnEllipsis(double room, String cut) {
    String text = "keep full log here";
    String found = PLAIN.cut(text, room);
    assertTrue(room > 50 ? PLAIN.width(found) <= room : found.endsWith("…"));
    assertEquals(cut.charAt(0), found.charAt(0));
    assertEquals(cut.endsWith("…"), found.endsWith("…"));
  }

  @Test
  void aNumberIsMadeSmallerButNeverCut() {
    Label label = Label.of("123 15/16", 20, new Spot(0, 0)).within(30).uncut().fitted();
    assertEquals("123 15/16", label.text());
    assertTrue(label.box().width() <= 30.01);
  }

  @Test
  void aTextIsFirstMadeSmallerThenCut() {
    Label little = Label.of("shoulder", 10, new Spot(0, 0));
    double width = PLAIN.width("shoulder");
    assertEquals("shoulder", little.within(width * 0.8).fitted().text());
    assertTrue(little.within(width * 0.5).fitted().text().endsWith("…"));
  }

  @Test
  void aSurrogatePairIsNotCutInTwo() {
    String cut = PLAIN.cut("𝐀𝐁𝐂𝐃𝐄𝐅", 30);
    assertTrue(cut.codePoints().noneMatch(c -> c >= 0xd800 && c <= 0xdfff), cut);
  }
}
