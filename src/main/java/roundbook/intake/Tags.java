package roundbook.intake;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;

/** Reads the tag of a log as the text that a person sees. */
final class Tags {
  /** A note or a word for a sum is longer. */
  private static final int PLAIN_LETTERS = 11;

  private static final int FIRST_LETTERS = 3;

  private static final Pattern WHOLE = Pattern.compile("\\d+\\.0+");
  private static final Pattern EXPONENT = Pattern.compile("\\d(?:[.,]\\d+)?[Ee]\\+\\d{1,2}");

  private final Block block;
  private final boolean composed;

  Tags(Block block) {
    this.block = block;
    this.composed = (block.has(Field.STEM) || block.has(Field.LOT)) && repeats();
  }

  /** A number of the log within its tree or load names it together with theirs. */
  private boolean repeats() {
    var texts =
        block.table().rows().stream()
            .filter(row -> row.number() > block.header().row().number())
            .map(row -> block.text(row, Field.TAG))
            .filter(text -> !text.isEmpty())
            .toList();
    return texts.stream().distinct().count() < texts.size();
  }

  /**
   * Returns whether a cell can only be a tag and the tag is what it shows: a short number, alone or
   * with one to three capital letters.
   */
  static boolean isPlain(Cell cell) {
    String text = cell.text();
    int letters = text.length();
    int digits = 0;
    int others = 0;
    while (digits + others < letters && letters <= PLAIN_LETTERS) {
      char letter = text.charAt(digits + others);
      if (letter >= '0' && letter <= '9') {
        digits++;
      } else if (letter >= 'A' && letter <= 'Z') {
        others++;
      } else {
        break;
      }
    }
    boolean plain = digits + others == letters && digits > 0 && others <= FIRST_LETTERS;
    return plain && (cell.kind() == CellKind.TEXT || cell.kind() == CellKind.NUMBER);
  }

  /** Returns the tag; an empty text where there is none, nothing where it cannot be used. */
  Optional<String> read(Row row) {
    if (!block.has(Field.TAG)) {
      return Optional.of("");
    }
    Cell cell = block.cell(row, Field.TAG);
    int column = block.heading(Field.TAG).column();
    return switch (cell.kind()) {
      case DATE -> {
        Dates.Guess guess = Dates.guess(cell.number(), false);
        Problem dated =
            guess
                .date()
                .map(day -> tagged(row, column, "tag").with("date", day))
                .orElseGet(() -> tagged(row, column, "tag-or-time"));
        block.refuse(dated.remedyOf("tag-text"), "");
        yield Optional.empty();
      }
      case BLANK, ERROR, UNCOMPUTED -> {
        block.say(block.problem(row, column, ProblemCode.MISSING_ID, "row"));
        yield Optional.of("");
      }
      default -> Optional.of(composed(row, text(row, cell, column)));
    };
  }

  private Problem tagged(Row row, int column, String variant) {
    return block.problem(row, column, ProblemCode.DATE_IN_NUMBER, variant);
  }

  private String composed(Row row, String own) {
    if (!composed) {
      return own;
    }
    String lot = block.text(row, Field.LOT);
    String stem = block.text(row, Field.STEM);
    return (lot.isEmpty() ? "" : lot + "-") + (stem.isEmpty() ? "" : stem + "-") + own;
  }

  private String text(Row row, Cell cell, int column) {
    String text = cell.text();
    if (cell.kind() != CellKind.TEXT || text.length() < 3) {
      return text;
    }
    if (text.indexOf('+') >= 0 && EXPONENT.matcher(text).matches()) {
      String whole = new BigDecimal(text.replace(',', '.')).toPlainString();
      block.say(
          block
              .problem(row, column, ProblemCode.DOUBTFUL_VALUE, "tag")
              .with("text", text)
              .with("whole", whole)
              .about(whole));
      return whole;
    }
    return text.indexOf('.') > 0 && WHOLE.matcher(text).matches()
        ? text.substring(0, text.indexOf('.'))
        : text;
  }
}
