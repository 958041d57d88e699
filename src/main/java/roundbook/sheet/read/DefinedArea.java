package roundbook.sheet.read;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.page.Area;
import roundbook.table.NamedBook.Range;

/** Reads what a defined name stands for, where it is an area of one sheet. */
final class DefinedArea {
  private static final Pattern AREA =
      Pattern.compile(
          "\\$?(?:'((?:[^']|'')+)'|([^'!\\[\\]:]+))[!.]"
              + "(\\$?[A-Z]{1,3}\\$?[1-9]\\d{0,6})(?::(\\$?[A-Z]{1,3}\\$?[1-9]\\d{0,6}))?");

  private DefinedArea() {}

  /** Returns the area; empty for a formula, a lost reference or several areas. */
  static Optional<Range> of(String text) {
    Matcher matcher = AREA.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String quoted = matcher.group(1);
    String sheet = quoted == null ? matcher.group(2) : quoted.replace("''", "'");
    String last = matcher.group(4) == null ? matcher.group(3) : matcher.group(4);
    Area area = Area.of(matcher.group(3)).to(Area.of(last));
    return Optional.of(new Range(sheet, area.top(), area.left(), area.bottom(), area.right()));
  }
}
