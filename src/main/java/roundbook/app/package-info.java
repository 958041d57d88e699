/**
 * Arguments, batches of files, safe writing, logging and the exit code.
 *
 * <p><b>A shared yard</b> ({@code --yard}) is run in three steps that all files take together: all
 * are read side by side, each chooses in its turn from what those before it left, all are written
 * side by side. So {@code -j} changes nothing, a job that fails before it has chosen leaves its
 * logs to the next, and every workbook knows what the later ones took. Only logs with a place, in a
 * wall or beside an opening, are taken; spares stay everyone's, as one pile has one heap of spares.
 * A log is known by its row in the yard's file, for jobs read the pile under their own settings. In
 * a log list a taken log is marked to be skipped, so that a plan made anew from the workbook leaves
 * it alone. The output folder is tried before a job takes anything; a disk that fills up later
 * leaves the job's logs taken, and the run says which workbook is missing. {@code --resume} passes
 * nothing over where a yard is shared: all jobs choose again, and as the choice is the same, so are
 * the workbooks.
 *
 * <p><b>Writing</b>: a temporary file in the same folder, forced to disk, reopened and read, then
 * given its name by a hard link, which is atomic and fails when another run took the name. It is
 * locked while it is written; the system takes the lock off when a run dies, so the next run knows
 * what may be cleared away.
 *
 * <p><b>An interrupt only asks.</b> A search that runs ends, and the best plan so far is written
 * with a warning; files whose turn has not come are not begun. A hook at shutdown waits for that.
 * Java hears no further interrupt by itself, so the hook asks {@code sun.misc.Signal}, if there is
 * one, to end the process at a second; it is called by method handles, for its warnings cannot be
 * turned off under {@code -Werror}. The digest of such a workbook never matches, so {@code
 * --resume} plans it anew.
 *
 * <p><b>Namesakes are kept apart.</b> Files of one name from different folders, written into one
 * folder, would become revisions of each other, and their plain tables would replace each other;
 * refusing the second would make {@code -o} useless for jobs that all keep a {@code tally.csv}. So
 * each goes into the folder below that is its own as seen from the deepest folder they share
 * ({@code Together}); a file without a namesake needs none. Two in one folder that differ in their
 * ending alone, a {@code tally.csv} and a {@code tally.xlsx}, keep the ending in the names of their
 * workbooks when both are run; run one after the other they share a name, for the one may well be
 * the other saved anew, and the later one says which file the revision before came from.
 *
 * <p><b>A workbook carries a digest</b> of the files, options and version it was made from, so that
 * {@code --resume} need not trust times of files.
 *
 * <p><b>Large files are read ahead</b> on a thread of their own while the rows before are checked;
 * only {@code app} knows of threads.
 *
 * <p><b>A run is mostly its start.</b> In so short a run loading classes, linking lambdas and
 * compiling cost more than the work; so texts are joined by plain calls ({@code
 * -XDstringConcat=inline}), only the command that is run is described, Logback stays out unless
 * {@code --log} is given, pictures are packed at level 5 (a tenth larger, eight times as fast) and
 * put into the workbook as they are, and the raster lays whole bytes. Records that are looked up or
 * compared in every run have an {@code equals} and {@code hashCode} of their own, for the first use
 * of a record's links a dozen methods; the image's Java makes no class for each constructor of the
 * workbook library. A finished workbook is read for whole parts and well-formed XML, not for cells.
 * Java is started with options of its own ({@code src/dist/roundbook}, {@code roundbook} in the
 * sources), for a jar can name none: the first compiler alone and as many threads of it as at the
 * start, the collector for one thread, large pages, and the archive of classes at a fixed place.
 * Tried and dropped: other thresholds for compiling, less inlining, another young heap, no file of
 * counters for other programs, one compiling thread. No gain that could be measured, with hardly
 * any search: a jar that is not packed, borders handed to the workbook library in one step, its log
 * asked for by name, hash codes of their own for more records. Level 3 for pictures saves some 20
 * ms in all and makes the workbook 6 % larger.
 *
 * <p><b>A lone file is planned on one thread but for the search</b>, which has all processors. On
 * two cores the compiler needs what the main thread leaves: pages made on two threads, the workbook
 * begun or its sheets filled beside other work, and small workbooks written to nowhere beforehand
 * took as long or longer, and more processor time. Files of a batch are run side by side where
 * asked; so no two classes of the program need each other to be initialized, or two threads could
 * wait for each other.
 */
package roundbook.app;
