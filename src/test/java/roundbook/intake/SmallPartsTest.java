package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.problem.words.Sentences;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Guesses and limits that need no tally. */
class SmallPartsTest {
  /**
   * What was typed, the day that a spreadsheet made of it, and the guess. Serial days as in ISO/IEC
   * 29500-1, 18.17.4.1: the 1900 date base, whose day 61 is 1 March 1900.
   */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "2004-10-03, false, 'Was it 10-3/4? Type 10 3/4 or set the column to Text.'",
    "2008-12-05, false, 'Was it 12-5/8? Type 12 5/8 or set the column to Text.'",
    "2016-11-15, false, 'Was it 11-15/16? Type 11 15/16 or set the column to Text.'",
    "2002-09-01, false, 'Was it 9-1/2? Type 9 1/2 or set the column to Text.'",
    "2024-03-04, false, 'Was it 3/4? Type the whole inches too, or set the column to Text.'",
    "2024-04-03, false, 'Was it 4-3? Type the whole inches too, or set the column to Text.'",
    "2024-06-24, true, 'Was it 24-6? Type 24'' 6\" or set the column to Text.'",
    "2024-12-05, true, 'Was it 12-5? Type 12'' 5\" or set the column to Text.'",
    "2024-08-03, true, 'Was it 8-3? Type 8'' 3\" or set the column to Text.'",
  })
  void guessesWhatADateWas(LocalDate day, boolean along, String remedy) {
    long serial = ChronoUnit.DAYS.between(LocalDate.of(1900, 3, 1), day) + 61;
    Dates.Guess guess = Dates.guess(BigDecimal.valueOf(serial), along);
    assertEquals(remedy, guess.remedy().in(Sentences.english()));
    String date = guess.date().orElseThrow().in(Sentences.english());
    assertEquals(true, date.contains(String.valueOf(day.getYear())), date);
  }

  @ParameterizedTest
  @CsvSource({"0", "0.75", "-5", "2958466", ","})
  void aTimeIsNoDay(BigDecimal serial) {
    assertEquals(Optional.empty(), Dates.guess(serial, true).date());
  }

  /** The last day that a spreadsheet has is 31 December 9999, day 2,958,465. */
  @Test
  void theLastDayIsOne() {
    Dates.Guess last = Dates.guess(BigDecimal.valueOf(2_958_465), true);
    assertEquals(true, last.date().orElseThrow().in(Sentences.english()).contains("9999"));
  }

  @ParameterizedTest
  @CsvSource({
    "Overhang, Overhang",
    "overhnag, Overhang",
    "Chinking gap, Chinking_gap",
    "chinkin-gap, Chinking_gap",
    "Log_thicknes, Log_thickness",
    "Wal_height, Wall_height",
    "Wal_hights,",
    "Colour,",
    "'',",
  })
  void findsTheSettingThatWasMeant(String typed, String meant) {
    assertEquals(Optional.ofNullable(meant), Spelling.nearest(typed, 2), typed);
  }

  /** Letters changed, added and left out, two at most; a third makes it another word. */
  @Test
  void findsEverySettingBehindTwoSlips() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 500; i++) {
      StringBuilder typed = new StringBuilder("Squaring_allowance");
      for (int slip = 0; slip < 2; slip++) {
        int at = random.nextInt(typed.length());
        switch (random.nextInt(3)) {
          case 0 -> typed.setCharAt(at, 'q');
          case 1 -> typed.insert(at, 'z');
          default -> typed.deleteCharAt(at);
        }
      }
      assertEquals(
          Optional.of("Squaring_allowance"), Spelling.nearest(typed.toString(), 2), "" + typed);
    }
    assertEquals(Optional.empty(), Spelling.nearest("Sqqqring_allowqnce", 2));
  }

  @ParameterizedTest
  @CsvSource({
    "length, 72, true", "length, 71.9, false", "length, 720, true", "length, 720.1, false",
    "diameter, 4, true", "diameter, 3.99, false", "diameter, 36, true", "diameter, 36.01, false",
    "length, 0, false", "diameter, 0, false", "length, -100, false",
  })
  void aWallLogHasLimits(String what, double inches, boolean plausible) {
    Length length = Length.of(inches, LengthUnit.INCH);
    boolean found = what.equals("length") ? Plausible.length(length) : Plausible.diameter(length);
    assertEquals(plausible, found);
  }

  /** 0.6 in a foot over 20 ft are 12 in. */
  @ParameterizedTest
  @CsvSource({"12, false", "12.01, true", "-12, false", "-12.01, true", "0, false"})
  void tapersByNoMoreThanAnInchInTwenty(double taper, boolean much) {
    Length tip = Length.ofInches(10);
    Length butt = tip.plus(Length.of(taper, LengthUnit.INCH));
    assertEquals(much, Plausible.tapersTooMuch(Length.of(20, LengthUnit.FOOT), butt, tip));
  }

  @ParameterizedTest
  @CsvSource({
    "5, true, 5 m (16.4 ft)",
    "20, true, 20 ft",
    "216, true, 216 in (18 ft) or 216 cm (7.1 ft)",
    "5500, true, 5500 mm (18 ft)",
    "1, true,",
    "32, false, 32 in or 32 cm (12.6 in)",
    "320, false, 320 mm (12.6 in)",
    "3, false,",
    "0, false,",
  })
  void suggestsTheUnitsThatFit(BigDecimal number, boolean along, String suggestion) {
    String found =
        Plausible.suggestion(number, along).map(each -> each.in(Sentences.english())).orElse(null);
    assertEquals(suggestion, found);
  }

  @ParameterizedTest
  @EnumSource(names = {"BUTT", "MID", "TIP"})
  void aDiameterHasAGirthAndAReadingAcross(Field field) {
    assertEquals(field + "_GIRTH", field.asGirth().name());
    assertEquals(field + "_ACROSS", field.across().name());
    assertEquals(true, field.diameter() && field.asGirth().girth() && !field.girth());
  }

  @ParameterizedTest
  @EnumSource(
      mode = EnumSource.Mode.EXCLUDE,
      names = {"BUTT", "MID", "TIP"})
  void otherFieldsHaveNone(Field field) {
    assertEquals(false, field.diameter());
    assertThrows(IllegalArgumentException.class, field::asGirth);
    assertThrows(IllegalArgumentException.class, field::across);
  }

  /** The name that a setting gives a field finds it again, in any spelling. */
  @ParameterizedTest
  @EnumSource
  void aFieldIsFoundByItsName(Field field) {
    String name = field.label().substring("Column_".length());
    assertEquals(Optional.of(field), Field.named(name));
    assertEquals(Optional.of(field), Field.named(" " + name.replace('_', '-').toUpperCase() + " "));
    assertEquals(true, Mapping.isLabel(field.label()));
  }

  @Test
  void anUnknownNameIsNoField() {
    assertEquals(Optional.empty(), Field.named("crown"));
    assertEquals(false, Mapping.isLabel("Column_crown"));
    assertEquals(true, Mapping.isLabel("length unit"));
  }
}
