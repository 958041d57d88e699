package roundbook.sheet.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.sheet.kind.Guard;
import roundbook.table.NamedBook;
import roundbook.table.Row;
import roundbook.table.RowTaker;
import roundbook.table.Table;

/** Reads workbooks of the zipped XML kind, the first rows at once and the others when asked. */
final class XlsxReader {
  private static final int MOST_HELD_CELLS = 2_000_000;

  private final String file;
  private final Path path;
  private int held;

  XlsxReader(String file, Path path) {
    this.file = file;
    this.path = path;
  }

  /** Reads every sheet; not of a workbook written for a crew. */
  Read<List<Table>> read() throws Exception {
    try (XlsxBook book = XlsxBook.open(file, path)) {
      if (book.isCrew()) {
        throw Guard.stop(ProblemCode.CREW_WORKBOOK, "", file);
      }
      return Read.of(tables(book), List.of());
    }
  }

  /** Reads every sheet with the defined names, whoever wrote the workbook. */
  Read<NamedBook> readNamed() throws Exception {
    try (XlsxBook book = XlsxBook.open(file, path)) {
      return Read.of(new NamedBook(file, tables(book), book.names(), book.lostNames()), List.of());
    }
  }

  private List<Table> tables(XlsxBook book)
      throws IOException, XMLStreamException, InvalidFormatException {
    List<Table> tables = new ArrayList<>();
    for (XlsxBook.SheetPart sheet : book.sheets()) {
      tables.add(table(book, sheet));
    }
    if (tables.isEmpty()) {
      throw Guard.stop(ProblemCode.EMPTY_FILE, "no-sheet", file);
    }
    return tables;
  }

  private Table table(XlsxBook book, XlsxBook.SheetPart sheet)
      throws IOException, XMLStreamException, InvalidFormatException {
    List<Row> rows = new ArrayList<>();
    Set<Table.Mark> marks = sheet.hidden() ? Set.of(Table.Mark.HIDDEN) : Set.of();
    try (XlsxRows reader = new XlsxRows(book, sheet)) {
      Row row = reader.next();
      while (row != null && rows.size() < Table.HELD_ROWS) {
        rows.add(row);
        hold(row);
        row = reader.next();
      }
      String name = sheet.name();
      return row == null
          ? Table.of(file, name, marks, rows)
          : new Table(file, name, marks, rows, taker -> readAll(name, taker));
    }
  }

  private void hold(Row row) {
    held += row.cells().size();
    if (held > MOST_HELD_CELLS) {
      throw Guard.stop(ProblemCode.TOO_LARGE, "cells", file);
    }
  }

  private Optional<Problem> readAll(String sheet, RowTaker taker) {
    Read<Boolean> read =
        Guard.read(
            file,
            () -> {
              try (XlsxBook book = XlsxBook.open(file, path)) {
                give(book, sheet, taker);
              }
              return Read.of(true, List.of());
            });
    return read.problems().stream().findFirst();
  }

  private static void give(XlsxBook book, String sheet, RowTaker taker)
      throws IOException, XMLStreamException, InvalidFormatException {
    XlsxBook.SheetPart wanted =
        book.sheets().stream().filter(each -> each.name().equals(sheet)).findFirst().orElseThrow();
    try (XlsxRows rows = new XlsxRows(book, wanted)) {
      for (Row row = rows.next(); row != null; row = rows.next()) {
        try {
          taker.take(row);
        } catch (RuntimeException own) {
          throw new Guard.Own(own);
        }
      }
    }
  }
}
