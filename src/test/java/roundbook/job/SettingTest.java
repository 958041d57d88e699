package roundbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.job.BuildRules.Origin;
import roundbook.job.BuildRules.Value;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** Settings by their names, their defaults in both systems, and rules made of them. */
class SettingTest {
  private static final BuildRules NONE = BuildRules.of(Map.of());

  @ParameterizedTest
  @EnumSource(Setting.class)
  void aNameIsFoundHoweverItIsTyped(Setting setting) {
    assertEquals(Optional.of(setting), Setting.ofLabel(setting.label()));
    assertEquals(
        Optional.of(setting),
        Setting.ofLabel(" " + setting.name().toLowerCase().replace('_', ' ') + " "));
    assertEquals(Optional.of(setting), Setting.ofLabel(setting.label().replace('_', '-')));
    assertEquals(Optional.empty(), Setting.ofLabel(setting.label() + "x"));
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void aDefaultIsOfItsKind(Setting setting) {
    for (boolean metric : new boolean[] {false, true}) {
      String text = setting.standard(metric);
      if (text.isEmpty()) {
        continue;
      }
      switch (setting.kind()) {
        case LENGTH ->
            assertTrue(
                new LengthReader(metric ? LengthUnit.MILLIMETRE : LengthUnit.INCH, false)
                    .read(text)
                    .isPresent());
        case CHOICE -> assertTrue(setting.choices().contains(text), setting.label());
        case TEXT -> assertFalse(text.isBlank());
        default -> new BigDecimal(text);
      }
    }
  }

  @Test
  void whatHasNoValueIsAbsent() {
    assertEquals(Optional.empty(), NONE.value(Setting.WALL_HEIGHT));
    assertEquals(Optional.empty(), NONE.optionalLength(Setting.WALL_HEIGHT));
    assertEquals(OptionalInt.empty(), NONE.rounds());
    assertEquals("", NONE.text(Setting.CURRENCY));
    assertEquals(LengthUnit.INCH, NONE.unit());
    assertThrows(IllegalStateException.class, () -> NONE.length(Setting.CHINKING_GAP));
    assertThrows(IllegalStateException.class, () -> NONE.number(Setting.SEED));
  }

  @Test
  void aChangedValueLeavesTheOthersAndTheOldRules() {
    BuildRules one = NONE.with(Setting.CHINKING_GAP, Length.ofInches(1), Origin.OPTION);
    BuildRules two = one.with(Setting.ROUNDS, BigDecimal.TEN, Origin.WORKBOOK);
    assertEquals(OptionalInt.of(10), two.rounds());
    assertEquals(OptionalInt.empty(), one.rounds());
    assertEquals(Length.ofInches(1), two.gap());
    assertEquals(
        new Value(Length.ofInches(1), Origin.OPTION),
        two.value(Setting.CHINKING_GAP).orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"in, false", "mm, true", "cm, true"})
  void theUnitTellsTheSystem(String unit, boolean metric) {
    assertEquals(metric, NONE.with(Setting.UNITS, unit, Origin.DEFAULT).metric());
  }

  /** Butts run round the building and the other way round in the next round. */
  @ParameterizedTest
  @CsvSource({
    "clockwise, 1, true",
    "clockwise, 2, false",
    "counterclockwise, 1, false",
    "counterclockwise, 2, true"
  })
  void buttsAlternate(String run, int round, boolean clockwise) {
    BuildRules rules = NONE.with(Setting.BUTTS_RUN, run, Origin.DEFAULT);
    assertEquals(clockwise, rules.clockwise(round));
  }
}
