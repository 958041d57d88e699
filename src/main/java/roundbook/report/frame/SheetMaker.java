package roundbook.report.frame;

import java.util.List;
import roundbook.page.Sheet;

/** Makes the sheets of one kind, one or several of them. */
@FunctionalInterface
public interface SheetMaker {
  /** Returns the sheets in the order of their tabs; none where the plan has nothing for them. */
  List<Sheet> sheets(CrewContext context);
}
