package roundbook.picture.letter;

import java.util.ArrayList;
import java.util.List;

/** Breaks a text into lines that fit a width. */
public final class Paragraph {
  private Paragraph() {}

  /** Returns the lines of a text, broken at blanks; a word too wide has a line of its own. */
  public static List<String> lines(String text, Lettering lettering, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = (line + " " + word).strip();
      boolean full = !line.isEmpty() && lettering.width(longer) > width;
      if (full) {
        lines.add(line);
      }
      line = full ? word : longer;
    }
    lines.add(line);
    return lines;
  }
}
