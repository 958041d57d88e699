package roundbook.markup;

import roundbook.table.Row;

/** Takes the sheets of a file as they are read. */
interface SheetTaker {
  /** Begins a sheet; returns whether its rows are wanted. */
  boolean begin(String name);

  /** Takes the next row that is not blank; returns whether more are wanted. */
  boolean row(Row row);

  /** Ends the sheet. */
  void end(boolean hidden);
}
