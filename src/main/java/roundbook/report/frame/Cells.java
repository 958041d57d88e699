package roundbook.report.frame;

import java.util.Locale;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.Role;
import roundbook.plan.PiecePlan.Weight;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/**
 * Makes the cells of tables in the unit and the words of a job.
 *
 * @param context the job's context
 */
public record Cells(CrewContext context) {
  private static final long SIXTY_FOURTH = LengthUnit.INCH.nanometres() / 64;

  /** Returns a table's text, left. */
  public Cell text(String text) {
    return Cell.text(text);
  }

  /** Returns a table's text, bold. */
  public Cell bold(String text) {
    return Cell.text(text).role(Role.BODY_BOLD);
  }

  /** Returns a table's text, centred. */
  public Cell centre(String text) {
    return Cell.text(text).role(Role.BODY_CENTRE);
  }

  /** Returns a word of the bundle in a table, centred. */
  public Cell word(String key) {
    return centre(context.text(key));
  }

  /** Returns the name of a sheet that leads there. */
  public Cell link(String tab) {
    return bold("→ " + tab).linkTo(tab);
  }

  /** Returns a whole number, centred. */
  public Cell count(long number) {
    return Cell.number(number).role(Role.BODY_CENTRE).format(Format.WHOLE);
  }

  /** Returns a tape distance as the crew reads it, rounded to the print step, as text. */
  public Cell tape(Length length) {
    return centre(formats().feetInches(length));
  }

  /** Returns a tape distance to the nearest inch or centimetre, for what is only estimated. */
  public Cell about(Length length) {
    return tape(length.roundedTo(unit().coarseStep()));
  }

  /** Returns a diameter or mark rounded to the print step, as a number of the job's unit. */
  public Cell printed(Length length) {
    return exact(length.roundedTo(context.rules().printStep()));
  }

  /** Returns a length as a number of the job's unit, exactly as it was read. */
  public Cell exact(Length length) {
    return Cell.length(length, unit()).role(Role.BODY_CENTRE).format(format(length));
  }

  /** Returns a weight in whole pounds or kilograms, with its unit. */
  public Cell weight(Weight weight) {
    boolean metric = context.rules().metric();
    return Cell.number(Math.round(metric ? weight.kilograms() : weight.pounds()))
        .format(metric ? Format.KILOGRAMS : Format.POUNDS);
  }

  /** Returns a weight that gear is chosen by, with a sign where what it rests on stands in. */
  public Cell mayWeigh(Weight weight) {
    boolean metric = context.rules().metric();
    Cell shown = weight(new Weight(weight.most(), weight.balance()));
    return weight.standsIn()
        ? shown.format(metric ? Format.KILOGRAMS_STAND_IN : Format.POUNDS_STAND_IN)
        : shown;
  }

  /** Returns a length in whole inches and fractions or in millimetres, with its unit, as text. */
  public String withUnit(Length length) {
    return formats().mark(length) + " " + unit().symbol();
  }

  /** Returns the word for the job's unit in the plural, such as {@code inches}. */
  public String unitWord() {
    return context.text("unit." + unit().symbol());
  }

  /** Returns the name of a sheet that leads there, and for whom it is printed if not the crew. */
  public Cell linkForCrew(String tab) {
    return context.sets().stream()
        .filter(set -> set.kind() != PrintSet.Kind.CREW)
        .filter(set -> set.parts().stream().anyMatch(part -> part.sheet().equals(tab)))
        .map(set -> "start.print." + set.kind().name().toLowerCase(Locale.ROOT))
        .map(key -> bold("→ " + tab + " (" + context.text(key) + ")").linkTo(tab))
        .findFirst()
        .orElseGet(() -> link(tab));
  }

  /** Returns the formats of the job. */
  public LengthFormat formats() {
    return context.formats();
  }

  private LengthUnit unit() {
    return context.rules().unit();
  }

  private Format format(Length length) {
    if (unit() == LengthUnit.INCH) {
      return length.nanometres() % SIXTY_FOURTH == 0 ? Format.FRACTION : Format.DECIMAL_3;
    }
    return length.nanometres() % unit().nanometres() == 0 ? Format.WHOLE : Format.DECIMAL_1;
  }
}
