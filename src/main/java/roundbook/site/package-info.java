/**
 * What a crew typed into its workbook, read back by the names of the cells.
 *
 * <p><b>The crew workbook is its own record.</b> Cells that are typed in, the log list, every
 * setting, wall, opening and pin have defined names, so a revision is planned from the one before
 * alone. A name stays with its cell when columns are added or hidden, when a sheet is renamed, when
 * LibreOffice saves the file; a lost log is known by the row that the x stands in, for a sorted
 * list moves rows and not names. {@code page.CellNames} holds the names and the number of their
 * layout; a workbook of an older layout is read without the boxes that came later, one of a layout
 * to come is refused. A setting that leaves no trace in the file came after it and has its default.
 *
 * <p><b>Two copies are read as one</b> box by box, before anything typed is held against anything
 * else: one may have the readings and the other the ticks. Where both have something and not the
 * same nothing is chosen. A setting that only one of them changed has that value.
 *
 * <p><b>What was deleted is missed aloud.</b> A deleted cell leaves its name in the file, standing
 * for {@code #REF!} or for a sheet that is not there; {@code site.DeletedCells} looks for such
 * names. Without the record of what is cut nothing is written; without the list of problems, a
 * column of the log list or the row of an opening or a pin a line says what the next plan leaves
 * out.
 */
package roundbook.site;
