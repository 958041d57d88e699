package roundbook.page;

import java.util.List;

/**
 * What may be typed into cells, or when they look different.
 *
 * <p>Formulas are written for the area's first cell, with relative addresses, and hold for the
 * others shifted. An empty cell always passes a check.
 */
public sealed interface Rule {

  /** Returns the cells that the rule is for. */
  Area area();

  /**
   * A cell that takes one of a few words, offered as a list.
   *
   * @param area the cells
   * @param choices the words, none with a comma, at most 255 characters together
   * @param advice what to say
   */
  record OneOf(Area area, List<String> choices, Advice advice) implements Rule {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if a spreadsheet cannot hold it
     */
    public OneOf {
      choices = List.copyOf(choices);
      String joined = String.join(",", choices);
      if (choices.isEmpty()
          || joined.length() > 255
          || choices.stream().anyMatch(choice -> choice.matches(".*[,\"].*"))) {
        throw new IllegalArgumentException("no list of choices: " + joined);
      }
    }
  }

  /**
   * A cell that takes one of the values standing in other cells.
   *
   * @param area the cells
   * @param source the other cells as a formula, a name or {@code 'Log list'!$A$5:$A$60}
   * @param advice what to say
   */
  record OneOfCells(Area area, String source, Advice advice) implements Rule {}

  /**
   * A cell that takes a number between two limits, both allowed.
   *
   * @param area the cells
   * @param least the least number
   * @param most the largest number
   * @param advice what to say
   */
  record Between(Area area, double least, double most, Advice advice) implements Rule {}

  /**
   * A cell that takes whatever makes a formula true.
   *
   * @param area the cells
   * @param formula the formula, without its equals sign
   * @param advice what to say
   */
  record Holds(Area area, String formula, Advice advice) implements Rule {}

  /**
   * Cells that take on the looks of another role while a formula is true.
   *
   * <p>Where two such rules hold for one cell, the one added first wins.
   *
   * @param area the cells
   * @param formula the formula, without its equals sign
   * @param role the role whose font, fill and border are taken; not its size
   */
  record LooksLike(Area area, String formula, Role role) implements Rule {}

  /**
   * What a person reads at a cell that is checked.
   *
   * @param title a few words, at most 32 characters
   * @param prompt shown while the cell is chosen, at most 255 characters, or empty
   * @param error shown when the value does not pass, at most 255 characters
   * @param refuse whether such a value is refused, or only questioned
   */
  record Advice(String title, String prompt, String error, boolean refuse) {
    /**
     * Checks the lengths that spreadsheets allow.
     *
     * @throws IllegalArgumentException if a text is too long
     */
    public Advice {
      if (title.length() > 32 || prompt.length() > 255 || error.length() > 255) {
        throw new IllegalArgumentException("advice too long: " + title);
      }
    }

    /** Returns advice for a value that is refused when wrong. */
    public static Advice refusing(String title, String error) {
      return new Advice(title, "", error, true);
    }

    /** Returns advice for a value that is questioned when odd. */
    public static Advice asking(String title, String error) {
      return new Advice(title, "", error, false);
    }

    /** Returns this advice with a text shown while the cell is chosen. */
    public Advice prompt(String other) {
      return new Advice(title, other, error, refuse);
    }
  }
}
