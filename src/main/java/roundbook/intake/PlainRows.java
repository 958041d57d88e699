package roundbook.intake;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import roundbook.job.DiameterProfile;
import roundbook.job.Log;
import roundbook.job.Log.Traits;
import roundbook.job.Log.Wish;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.table.RowTaker;
import roundbook.units.Length;

/**
 * Reads the rows of which nothing has to be said, in few steps.
 *
 * <p>Nearly every row of a long tally is a tag, measures that were read before, and a species.
 * Whatever could need a word (another cell, a new measure, an odd tag, ends that do not taper as
 * logs do) sends the row the long way, by {@link RowKind} and {@link LogReader}, which read the
 * rows taken here as the same logs. What runs a million times is compiled while it runs, so little
 * code saves more than few steps, and it takes the rows from their source itself: each method
 * between would be compiled with all of this once more.
 */
final class PlainRows implements RowTaker {
  private static final List<Field> MEASURES =
      List.of(Field.LENGTH, Field.BUTT, Field.MID, Field.TIP);

  private static final int MOST_NAMES = 1000;

  private final UniqueLogs taker;
  private final RowTaker longWay;
  private final int[] columns = new int[MEASURES.size()];
  private final Readings.OfField[] readings = new Readings.OfField[MEASURES.size()];
  private final Length[] found = new Length[MEASURES.size()];
  private Block block;
  private TraitReader traitReader;
  private ColumnDoubts doubts;
  private int tagColumn;
  private int speciesColumn;
  private Row last;
  private final Set<String> names = new HashSet<>();
  private int needed;
  private Cell species;
  private Traits traits;

  /**
   * Begins without a block, so that no row is plain.
   *
   * @param taker takes the logs of plain rows
   * @param longWay takes all other rows
   */
  PlainRows(UniqueLogs taker, RowTaker longWay) {
    this.taker = taker;
    this.longWay = longWay;
  }

  /** Returns whether a block is of a kind that has plain rows. */
  static boolean has(Block block) {
    int tag = column(block, Field.TAG);
    return tag > 0
        && block.header().blocks().size() == 1
        && block.columns().values().stream().allMatch(each -> each.column() >= tag)
        && block.columns().keySet().stream().noneMatch(PlainRows::isOdd)
        && block.columns().values().stream().noneMatch(Heading::estimated);
  }

  private static boolean isOdd(Field field) {
    return field.girth()
        || field == Field.STEM
        || field == Field.LOT
        || field == Field.LENGTH_REST
        || field == Field.BUTT_ACROSS
        || field == Field.MID_ACROSS
        || field == Field.TIP_ACROSS;
  }

  /** Returns the last plain row or another log, whichever stands further down; null if neither. */
  Row laterThan(Row other) {
    return last == null || other != null && other.number() > last.number() ? other : last;
  }

  /** Returns the number of the last plain row; 0 where there was none. */
  int lastNumber() {
    return last == null ? 0 : last.number();
  }

  /** Returns whether any row was plain. */
  boolean hasAny() {
    return last != null;
  }

  /** Takes all rows the long way from here on. */
  void end() {
    block = null;
  }

  /**
   * Begins with the rows of a block.
   *
   * @param of the block, which has plain rows
   * @param reader reads what a log is
   * @param counted takes the logs that were read
   */
  void begin(Block of, TraitReader reader, ColumnDoubts counted) {
    block = of;
    traitReader = reader;
    doubts = counted;
    traits = null;
    tagColumn = column(of, Field.TAG);
    speciesColumn = column(of, Field.SPECIES);
    needed = 1;
    for (int i = 0; i < columns.length; i++) {
      columns[i] = column(of, MEASURES.get(i));
      readings[i] = of.readings().of(MEASURES.get(i));
      needed += columns[i] > 0 ? 1 : 0;
    }
  }

  private static int column(Block block, Field field) {
    return block.has(field) ? block.heading(field).column() : 0;
  }

  @Override
  public void take(Row row) {
    if (!isPlain(row)) {
      longWay.take(row);
      return;
    }
    Diameters diameters = Diameters.of(found[0], found[1], found[2], found[3], false).orElseThrow();
    if (Plausible.tapersTooMuch(found[0], diameters.butt(), diameters.tip())) {
      longWay.take(row);
      return;
    }
    last = row;
    Traits told = traits(row);
    doubts.take(row, diameters, told.bark());
    taker.take(
        new Log(
            row.cell(tagColumn).text(),
            found[0],
            DiameterProfile.of(found[0], diameters.butt(), diameters.mid(), diameters.tip()),
            diameters.sources(),
            told,
            Wish.ANYWHERE,
            block.table().at(row, tagColumn),
            Map.of()));
  }

  private boolean isPlain(Row row) {
    return block != null
        && !row.hidden()
        && !row.struck()
        && isTagged(row)
        && find(row)
        && tapers()
        && hasNoMore(row);
  }

  /** Returns whether there is a plain tag, and a number, which no heading begins with. */
  private boolean isTagged(Row row) {
    Cell tag = row.cell(tagColumn);
    return Tags.isPlain(tag)
        && (tag.kind() == CellKind.NUMBER || isDigit(tag) || isDigit(row.cell(columns[0])));
  }

  private static boolean isDigit(Cell cell) {
    String text = cell.text();
    return !text.isEmpty() && text.charAt(0) >= '0' && text.charAt(0) <= '9';
  }

  /** Finds the measures of a row among those read before; returns whether all are. */
  private boolean find(Row row) {
    for (int i = 0; i < columns.length; i++) {
      found[i] = columns[i] == 0 ? null : readings[i].known(row.cell(columns[i]));
      if (columns[i] > 0 && found[i] == null) {
        return false;
      }
    }
    return true;
  }

  /** Returns whether no diameter found is larger than one nearer to the butt. */
  private boolean tapers() {
    Length before = null;
    for (int i = 1; i < found.length; i++) {
      if (before != null && found[i] != null && before.isLessThan(found[i])) {
        return false;
      }
      before = found[i] == null ? before : found[i];
    }
    return before != null;
  }

  /** Returns what the log is, the same again for the same species. */
  private Traits traits(Row row) {
    Cell own = speciesColumn == 0 ? null : row.cell(speciesColumn);
    if (traits == null || own != species) {
      species = own;
      String tag = row.cell(tagColumn).text();
      traits = traitReader.traits(row, new Measures(block, row, tag), tag);
    }
    return traits;
  }

  /** Returns whether nothing stands in the row but tag, measures and species. */
  private boolean hasNoMore(Row row) {
    Cell own = speciesColumn == 0 ? null : row.cell(speciesColumn);
    boolean named = own != null && !own.isBlank();
    return row.cells().size() == needed + (named ? 1 : 0)
        && row.note().isEmpty()
        && (!named || own == species || isName(own.text()));
  }

  /** Returns whether a text is a name and no ditto mark; few names stand in a tally. */
  private boolean isName(String text) {
    if (names.contains(text)) {
      return true;
    }
    boolean name = !block.words().isDitto(text);
    if (name && names.size() < MOST_NAMES) {
      names.add(text);
    }
    return name;
  }
}
