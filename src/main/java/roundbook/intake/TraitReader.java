package roundbook.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import roundbook.job.Log.Bark;
import roundbook.job.Log.Keep;
import roundbook.job.Log.Traits;
import roundbook.job.Log.Wish;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/** Reads what a row says of a log besides its measures. */
final class TraitReader {
  private static final Set<String> OVER =
      Set.of(
          "over",
          "ob",
          "o.b.",
          "on",
          "over bark",
          "outside",
          "mit",
          "mit rinde",
          "m.r.",
          "mr",
          "sur écorce",
          "pb",
          "på bark",
          "con corteza",
          "kuorellinen",
          "yes",
          "y");
  private static final Set<String> OFF =
      Set.of(
          "off",
          "ub",
          "u.b.",
          "ib",
          "i.b.",
          "under",
          "under bark",
          "inside",
          "peeled",
          "ohne",
          "ohne rinde",
          "o.r.",
          "or",
          "sous écorce",
          "sin corteza",
          "kuoreton",
          "none",
          "no",
          "n");
  private static final Pattern SWEEP_CLASS = Pattern.compile("\\p{L}{1,6}\\s?-?\\d?|\\d-\\p{L}+");
  private static final Map<String, Keep> KEEPS =
      Map.ofEntries(
          Map.entry("any", Keep.ANY),
          Map.entry("sill", Keep.SILL),
          Map.entry("sills", Keep.SILL),
          Map.entry("sill log", Keep.SILL),
          Map.entry("plate", Keep.PLATE),
          Map.entry("plates", Keep.PLATE),
          Map.entry("top plate", Keep.PLATE),
          Map.entry("header", Keep.HEADER),
          Map.entry("headers", Keep.HEADER),
          Map.entry("lintel", Keep.HEADER),
          Map.entry("spare", Keep.SPARE),
          Map.entry("spares", Keep.SPARE));

  private final Block block;
  private final String species;
  private final BitSet headed = new BitSet();
  private final Bark headings;

  TraitReader(Block block, String species) {
    this.block = block;
    this.species = species;
    block.header().columns().forEach(headed::set);
    this.headings = block.bark();
  }

  Traits traits(Row row, Measures measures, String tag) {
    String own = block.text(row, Field.SPECIES);
    return new Traits(
        own.isEmpty() ? species : own,
        bark(row),
        sweep(row, measures),
        keep(row, tag),
        skip(row, tag),
        remarks(row));
  }

  private Length sweep(Row row, Measures measures) {
    boolean measured = block.has(Field.SWEEP) && !hasSweepClass(row);
    return measured
        ? measures.other(Field.SWEEP, block.units().diameter()).orElse(Length.ZERO)
        : Length.ZERO;
  }

  /** Returns whether the sweep is a class such as S2, which is no measure. */
  boolean hasSweepClass(Row row) {
    return SWEEP_CLASS.matcher(block.text(row, Field.SWEEP)).matches();
  }

  /** Returns whether a word in the column of logs to leave out says neither yes nor no. */
  boolean isSkipAsked(Row row) {
    String text = block.text(row, Field.SKIP);
    return block.words().answer(text).isEmpty() && block.words().unfit(text).isEmpty();
  }

  private boolean skip(Row row, String tag) {
    String text = block.text(row, Field.SKIP);
    Optional<Boolean> answer = block.words().answer(text);
    if (answer.isEmpty()) {
      int column = block.heading(Field.SKIP).column();
      block.say(
          block
              .problem(row, column, ProblemCode.LOG_UNFIT, "skipped")
              .with("text", text)
              .about(tag)
              .remedy());
    }
    return answer.orElse(true);
  }

  /** Says words beside a log that is used which say that it cannot be built with. */
  void sayUnfit(Row row, Traits traits, Map<String, String> extra, String tag) {
    if (traits.skip() || traits.remarks().isEmpty() && extra.isEmpty()) {
      return;
    }
    List<String> texts = new ArrayList<>(extra.values());
    texts.add(0, traits.remarks());
    for (String text : texts) {
      Optional<String> word = block.words().unfit(text);
      if (word.isPresent()) {
        int column = block.has(Field.TAG) ? block.heading(Field.TAG).column() : 0;
        block.say(
            Problem.of(ProblemCode.LOG_UNFIT, "used", block.table().at(row, column))
                .found(text)
                .with("tag", tag)
                .with("word", word.get())
                .about(tag));
        return;
      }
    }
  }

  Bark bark(Row row) {
    String word = word(row, Field.BARK);
    if (word.isEmpty()) {
      return headings;
    }
    return OVER.contains(word) ? Bark.OVER : OFF.contains(word) ? Bark.OFF : Bark.UNSTATED;
  }

  private Keep keep(Row row, String tag) {
    String word = word(row, Field.KEEP);
    Keep keep = KEEPS.get(word);
    if (keep == null && !word.isEmpty()) {
      doubt(row, Field.KEEP, word, tag);
    }
    return keep == null ? Keep.ANY : keep;
  }

  private String remarks(Row row) {
    String own = block.text(row, Field.REMARKS);
    List<String> words = own.isEmpty() ? List.of() : List.of(own);
    for (Cell cell : row.cells()) {
      if (!headed.get(cell.column()) && !cell.isBlank()) {
        words = new ArrayList<>(words);
        words.add(cell.text());
      }
    }
    if (!row.note().isEmpty()) {
      words = new ArrayList<>(words);
      words.add(row.note());
    }
    return words.isEmpty() ? "" : String.join(" ", words);
  }

  Wish wish(Row row, String tag) {
    String wall = block.text(row, Field.WALL).toUpperCase(Locale.ROOT);
    String round = block.text(row, Field.ROUND);
    if (wall.isEmpty() && round.isEmpty()) {
      return Wish.ANYWHERE;
    }
    Optional<Integer> number =
        new LengthReader(LengthUnit.MILLIMETRE, false)
            .number(round)
            .filter(each -> each.stripTrailingZeros().scale() <= 0)
            .map(BigDecimal::intValue)
            .filter(each -> each > 0 && each < 1000);
    if (number.isEmpty() && !round.isEmpty()) {
      doubt(row, Field.ROUND, round, tag);
    }
    return new Wish(wall, number.map(OptionalInt::of).orElseGet(OptionalInt::empty));
  }

  /** Returns whether the row says that it is an upper log, not a butt log. */
  boolean upperLog(Row row) {
    String word = word(row, Field.PART);
    return word.startsWith("u")
        || word.startsWith("top")
        || word.startsWith("mid")
        || !word.isEmpty() && word.chars().allMatch(Character::isDigit) && !word.equals("1")
        || word.equals("no")
        || word.equals("n");
  }

  Map<String, String> extra(Row row) {
    List<Heading> others = block.header().others();
    if (others.isEmpty()) {
      return Map.of();
    }
    Map<String, String> extra = new LinkedHashMap<>();
    for (Heading other : others) {
      String text = row.cell(other.column()).text();
      if (!text.isEmpty()) {
        extra.putIfAbsent(other.text(), text);
      }
    }
    return extra;
  }

  private void doubt(Row row, Field field, String text, String tag) {
    String variant = field == Field.KEEP ? "keep" : "round";
    block.say(
        block
            .problem(row, block.heading(field).column(), ProblemCode.DOUBTFUL_VALUE, variant)
            .with("text", text)
            .about(tag));
  }

  private String word(Row row, Field field) {
    String text = block.text(row, field);
    return text.isEmpty() ? text : text.toLowerCase(Locale.ROOT);
  }
}
