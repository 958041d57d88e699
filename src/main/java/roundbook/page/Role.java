package roundbook.page;

/**
 * What a cell is for, which the style template turns into looks.
 *
 * <p>A sheet never says how a cell looks: the template workbook has one named cell a role, {@code
 * Style_TITLE} for {@link #TITLE}, and its font, border, fill, alignment, number format and lock
 * are copied. A new role needs a constant here and its look in the default template.
 */
public enum Role {
  /** The sheet's own name, very large, white on black. */
  TITLE("Name of the sheet"),
  /** What stands beside the title, white on black. */
  TITLE_SIDE("Beside the title"),
  /** Small print in the title's bar, white on black. */
  TITLE_NOTE("Small print beside the title"),
  /** The revision in the title's bar, white on black, right. */
  REVISION("Revision, in the title's bar"),
  /** A heading over a part of a sheet. */
  HEADING("Heading over a part"),
  /** A heading over a smaller part. */
  SUBHEADING("Heading over a smaller part"),
  /** A column's heading in a table, wrapped, centred. */
  COLUMN_HEAD("Heading of a column"),
  /** A column's heading over numbers of the LOWER marks, shaded. */
  COLUMN_HEAD_SHADED("Heading of a shaded column"),
  /** A label before or over a value. */
  LABEL("Label"),
  /** A small label under a large number, such as its unit. */
  LABEL_SMALL("Small label"),
  /** Text without a border, wrapped. */
  PLAIN("Text without a border"),
  /** Text without a border, bold, wrapped. */
  PLAIN_BOLD("Bold text without a border"),
  /** A table's text, left. */
  BODY("Text in a table"),
  /** A table's text, bold. */
  BODY_BOLD("Bold text in a table"),
  /** A table's text or number, centred. */
  BODY_CENTRE("Centred in a table"),
  /** A table's number, right. */
  NUMBER("Number in a table"),
  /** A table's number, bold, right. */
  NUMBER_BOLD("Bold number in a table"),
  /** A table's total, with a heavy line over it. */
  TOTAL("Total"),
  /** A word or log tag read at arm's length, bold, centred. */
  LARGE("Read at arm's length"),
  /** A number read at arm's length, centred, not bold. */
  LARGE_NUMBER("Number read at arm's length"),
  /** The length to cut, read at arm's length, bold, centred. */
  LARGE_CUT("Length to cut"),
  /** The label over an UPPER mark. */
  MARK_LABEL("Label of an UPPER mark"),
  /** An UPPER mark in a table. */
  MARK("UPPER mark in a table"),
  /** An UPPER mark at 48 points or more. */
  MARK_HUGE("UPPER mark, huge"),
  /** The label over a LOWER mark, shaded. */
  MARK_LABEL_LOWER("Label of a LOWER mark"),
  /** A LOWER mark in a table, shaded. */
  MARK_LOWER("LOWER mark in a table"),
  /** A LOWER mark at 48 points or more, shaded. */
  MARK_HUGE_LOWER("LOWER mark, huge"),
  /** The line under an UPPER mark that says where it is measured. */
  MARK_NOTE("Note under an UPPER mark"),
  /** The line under a LOWER mark that says where it is measured, shaded. */
  MARK_NOTE_LOWER("Note under a LOWER mark"),
  /** The round's number, as large as it fits. */
  ROUND_HUGE("Number of the round, huge"),
  /** A cell that is typed in on site: heavy border, pale yellow, not locked. */
  TYPED_IN("Typed in on site: a number"),
  /** The same for text or a choice from a list. */
  TYPED_IN_TEXT("Typed in on site: text"),
  /** The same, read at arm's length. */
  TYPED_IN_LARGE("Typed in on site: large"),
  /** An empty box for a tick by hand or an x, not locked. */
  TICK("Tick box"),
  /** A value that follows from what was typed in. */
  RESULT("Result of what was typed in"),
  /** The same, large. */
  RESULT_LARGE("Result, large"),
  /** A cell with a light grey ground. */
  SHADED("Shaded"),
  /** A cell of wood that is cut away. */
  WASTE("Cut away"),
  /** Small explaining text under a table, wrapped. */
  NOTE("Note under a table"),
  /** A warning to people, boxed heavily, wrapped. */
  CAUTION("Caution"),
  /** The headline of a warning to people, white on black. */
  CAUTION_HEAD("Head of a caution"),
  /** A value outside its limits, white on black. */
  FLAG("Outside its limits"),
  /** A value that is within its limits. */
  GOOD("Within its limits"),
  /** A value that differs from the plan, grey with a heavy border. */
  CHANGED("Differs from the plan"),
  /** A link to another sheet. */
  LINK("Link"),
  /** A tag's wall and round, as large as a tag allows. */
  TAG_HUGE("Tag: round and wall"),
  /** A tag's log and length. */
  TAG_LARGE("Tag: log and length"),
  /** A tag's lines. */
  TAG_BODY("Tag: lines"),
  /** A cell of a helping calculation, seen but unimportant. */
  HELPER("Helping calculation"),
  /** What stands over and under each printed page; only its font and size are used. */
  HEADER_FOOTER("Header and footer of printed pages");

  private final String purpose;

  Role(String purpose) {
    this.purpose = purpose;
  }

  /** Returns what the template's sheet says this role is for. */
  public String purpose() {
    return purpose;
  }
}
