package roundbook.sheet.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.poi.ss.usermodel.FillPatternType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import roundbook.page.Role;

/**
 * Letters stand out from their ground by 7 to 1, as the Web Content Accessibility Guidelines 2.1 of
 * the World Wide Web Consortium ask at level AAA (criterion 1.4.6); the sums are their definitions
 * of relative luminance and contrast ratio.
 */
class ContrastTest {
  @ParameterizedTest
  @EnumSource
  void everyRoleHasSevenToOne(Role role) {
    Look look = StandardLooks.looks().get(role);
    boolean solid = look.ground().pattern() == FillPatternType.SOLID_FOREGROUND;
    String ground = solid ? look.ground().colour() : Look.WHITE;
    double contrast = contrast(look.font().colour(), ground);
    assertTrue(contrast >= 7, role + ": " + contrast);
  }

  /** Black on white is 21 to 1 by definition; 767676 is known as the darkest grey of 4.5 to 1. */
  @ParameterizedTest
  @CsvSource({"000000, FFFFFF, 21.0", "767676, FFFFFF, 4.54", "595959, FFFFFF, 7.0"})
  void theRatioIsThatOfTheGuidelines(String letters, String ground, double ratio) {
    assertEquals(ratio, contrast(letters, ground), 0.01);
  }

  private static double contrast(String one, String other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static double luminance(String colour) {
    return 0.2126 * linear(colour, 0) + 0.7152 * linear(colour, 2) + 0.0722 * linear(colour, 4);
  }

  private static double linear(String colour, int at) {
    double part = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }
}
