package roundbook.harvester;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.xml.stream.XMLStreamException;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Row;
import roundbook.table.RowTaker;
import roundbook.table.Table;
import roundbook.units.LengthUnit;

/**
 * Reads harvested production files of the StanForD 2010 standard as a tally.
 *
 * <p>Every log of {@code HarvestedProduction/Machine/Stem/SingleTreeProcessedStem/Log} becomes a
 * row: its {@code LogLength} and its {@code LogDiameter}s of the categories Butt, Mid and Top,
 * under bark ({@code ub}) before over bark ({@code ob}). Units come from the message's {@code
 * lengthUnit} and {@code diameterUnit}, which the standard sets to cm and mm. {@code StemDiameters}
 * become the log's profile. The tag is {@code StemKey-LogKey}; the row is the line that the log
 * begins on. A tree with {@code StemDiameters} and no log is a felled stem, in a table of its own.
 */
public final class HarvesterReader {
  private static final String ROOT = "HarvestedProduction";

  private final String file;
  private final Path path;
  private final List<Stem> uncut = new ArrayList<>();
  private UncutStems shape;

  private HarvesterReader(String file, Path path) {
    this.file = file;
    this.path = path;
  }

  /** A problem that ends the reading. */
  private static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Stop(Problem problem) {
      this.problem = problem;
    }
  }

  /**
   * Reads a file: its first logs at once, the others of a large one when they are asked for.
   *
   * @param file the file's name, for messages
   * @param path the file
   * @return the tally, and the felled stems where there are any; or why there is none
   */
  public static Read<List<Table>> read(String file, Path path) {
    HarvesterReader reader = new HarvesterReader(file, path);
    try {
      return reader.read();
    } catch (Stop stop) {
      return Read.failed(List.of(stop.problem));
    } catch (IOException | XMLStreamException broken) {
      return Read.failed(List.of(reader.problem(broken)));
    }
  }

  private Read<List<Table>> read() throws IOException, XMLStreamException {
    List<Row> rows = new ArrayList<>();
    int[] bundled = {0};
    boolean whole = eachRow(row -> rows.add(row) && rows.size() <= Table.HELD_ROWS, bundled);
    List<Problem> problems = new ArrayList<>();
    if (bundled[0] > 0) {
      problems.add(
          Problem.of(ProblemCode.NOTE_ROW, "bundles", CellRef.ofFile(file))
              .with("count", bundled[0]));
    }
    List<Row> held = whole ? rows : rows.subList(0, Table.HELD_ROWS);
    Set<Table.Mark> marks = Set.of(Table.Mark.LINES);
    Table logs = new Table(file, "", marks, held, whole ? null : this::readAll);
    if (!whole) {
      uncut.clear();
      eachRow(row -> true, new int[1]);
    }
    List<Table> tables = new ArrayList<>();
    if (uncut.isEmpty() || held.size() > 1) {
      tables.add(logs);
    }
    if (!uncut.isEmpty()) {
      tables.add(shape.table(file, uncut));
      uncut.clear();
    }
    return Read.of(tables, problems);
  }

  private Optional<Problem> readAll(RowTaker taker) {
    try {
      eachRow(
          row -> {
            taker.take(row);
            return true;
          },
          new int[1]);
      return Optional.empty();
    } catch (Stop stop) {
      return Optional.of(stop.problem);
    } catch (IOException | XMLStreamException broken) {
      return Optional.of(problem(broken));
    }
  }

  private boolean eachRow(Predicate<Row> taker, int[] bundled)
      throws IOException, XMLStreamException {
    try (InputStream in = new BufferedInputStream(Files.newInputStream(path))) {
      StemReader stems = new StemReader(in);
      StemRows rows = rowsOf(stems);
      if (!taker.test(rows.headings())) {
        return false;
      }
      shape = new UncutStems(stems, rows.along(), rows.through());
      boolean whole =
          stems.eachStem(
              stem -> {
                if (UncutStems.isOne(stem)) {
                  uncut.add(stem);
                }
                return rows.rows(stem).stream().allMatch(taker);
              });
      bundled[0] = stems.bundled();
      return whole;
    }
  }

  private StemRows rowsOf(StemReader stems) throws XMLStreamException {
    String root = stems.root();
    if (!root.equals(ROOT)) {
      throw new Stop(
          Problem.of(ProblemCode.NOT_A_WORKBOOK, "xml", CellRef.ofFile(file))
              .with("root", root)
              .found(root)
              .remedyOf("harvested"));
    }
    return new StemRows(
        stems, unit("lengthUnit", stems.lengthUnit()), unit("diameterUnit", stems.diameterUnit()));
  }

  private LengthUnit unit(String attribute, String symbol) {
    return LengthUnit.ofSymbol(symbol)
        .orElseThrow(
            () ->
                new Stop(
                    Problem.of(ProblemCode.UNIT_UNKNOWN, "attribute", CellRef.ofFile(file))
                        .with("attribute", attribute)
                        .with("text", symbol)
                        .found(symbol)
                        .remedyOf("again-units")));
  }

  private Problem problem(Exception broken) {
    CellRef where = CellRef.ofFile(file);
    if (broken instanceof StemReader.DocumentType) {
      return Problem.of(ProblemCode.UNREADABLE, "document-type", where)
          .remedyOf("again-as-written");
    }
    boolean xml = broken instanceof XMLStreamException;
    int line =
        xml && ((XMLStreamException) broken).getLocation() != null
            ? ((XMLStreamException) broken).getLocation().getLineNumber()
            : 0;
    Problem unreadable =
        xml
            ? Problem.of(ProblemCode.UNREADABLE, "xml", where).with("line", line)
            : Problem.of(ProblemCode.UNREADABLE, "plain", where);
    return unreadable.remedyOf("again");
  }
}
